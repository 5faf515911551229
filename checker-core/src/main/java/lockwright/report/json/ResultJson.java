package lockwright.report.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import lockwright.report.Findings;

/** Writes findings as {@code result.json}; {@code docs/result.md} says what is in it. */
public final class ResultJson {
  private static final ObjectWriter WRITER = writer();

  private ResultJson() {}

  /** The file in UTF-8, lines ended by a line feed; the same findings give the same bytes. */
  public static byte[] bytes(Findings findings) {
    try {
      String text = WRITER.writeValueAsString(Result.of(findings)) + "\n";
      return text.getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a result is plain records, lists and words", e);
    }
  }

  private static ObjectWriter writer() {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator(""));
    printer.indentObjectsWith(lines);
    printer.indentArraysWith(lines);
    return JsonMapper.builder()
        .defaultPropertyInclusion(
            JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.ALWAYS))
        .build()
        .writer(printer);
  }
}
