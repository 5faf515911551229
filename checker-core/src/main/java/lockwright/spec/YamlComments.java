package lockwright.spec;

import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.comments.CommentType;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.scanner.Scanner;
import org.yaml.snakeyaml.scanner.ScannerImpl;
import org.yaml.snakeyaml.tokens.CommentToken;
import org.yaml.snakeyaml.tokens.Token;

/** The comments of a YAML file, which no reading of it keeps. */
final class YamlComments {
  private YamlComments() {}

  /** Each comment without its leading mark, in a text that can be read as YAML. */
  static List<Written> of(String file, String text) {
    LoaderOptions options = new LoaderOptions();
    options.setProcessComments(true);
    Scanner scanner = new ScannerImpl(new StreamReader(text), options);
    List<Written> comments = new ArrayList<>();
    while (!scanner.checkToken(Token.ID.StreamEnd)) {
      if (scanner.getToken() instanceof CommentToken comment
          && comment.getCommentType() != CommentType.BLANK_LINE) {
        Span at =
            new Span(
                file, comment.getStartMark().getLine() + 1, comment.getStartMark().getColumn() + 1);
        comments.add(new Written(comment.getValue(), at, false));
      }
    }
    return comments;
  }
}
