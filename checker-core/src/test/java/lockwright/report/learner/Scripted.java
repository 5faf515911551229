package lockwright.report.learner;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import lockwright.audit.Auditor;
import lockwright.audit.Claims;
import lockwright.railway.Box;
import lockwright.report.Findings;
import lockwright.report.html.Sheet;
import lockwright.report.json.ResultJson;
import org.mozilla.javascript.Context;
import org.mozilla.javascript.Function;
import org.mozilla.javascript.Scriptable;

/** The locking of the page, worked by a JavaScript engine without a page around it. */
final class Scripted implements AutoCloseable {
  /** Values of a state and answers go over as text, in the order of the quantities. */
  private static final String AROUND =
      """
      var apparatus = new Apparatus(JSON.parse(data));
      var names = keys.split('\\n');
      function stateOf(text) {
        var state = {};
        text.split('\\n').forEach(function (value, i) { state[names[i]] = value; });
        return state;
      }
      function textOf(state) {
        if (Object.keys(state).length !== names.length) {
          throw new Error('other quantities: ' + Object.keys(state).join());
        }
        return names.map(function (name) { return state[name]; }).join('\\n');
      }
      function beginning() { return textOf(apparatus.beginning()); }
      function tried(text) {
        var state = stateOf(text);
        return apparatus.movements(state).map(function (movement) {
          var holds = movement.holds(state);
          var entries = holds.map(function (h) { return h.entry; }).filter(function (e) { return e >= 0; });
          return movement.key + '\\t' + holds.length + '\\t' + entries.join();
        }).join('\\n');
      }
      function made(text, key) {
        var state = stateOf(text);
        return textOf(apparatus.movements(state).filter(function (movement) {
          return movement.key === key;
        })[0].after(state));
      }
      """;

  private final Context context = Context.enter();
  private final Scriptable scope;

  /**
   * What the script says of a movement.
   *
   * @param entries the numbers of the entries that hold it
   */
  record Tried(int holds, List<Integer> entries) {}

  Scripted(Box box, List<String> quantities) {
    context.setLanguageVersion(Context.VERSION_ES6);
    context.setOptimizationLevel(9);
    scope = context.initStandardObjects();
    scope.put("data", scope, BoxData.of(result(box)));
    scope.put("keys", scope, String.join("\n", quantities));
    String locking = Sheet.read(LearnersFrame.class, "locking.js");
    context.evaluateString(scope, locking, "locking.js", 1, null);
    context.evaluateString(scope, AROUND, "around", 1, null);
  }

  /** The result of a box of which nothing is claimed: that has its layout, frame and locking. */
  private static JsonNode result(Box box) {
    try {
      Claims none = new Claims(Map.of(), Map.of(), Map.of());
      return new JsonMapper()
          .readTree(
              ResultJson.bytes(
                  new Findings(
                      box, new TreeMap<>(), Auditor.audit(box, none), Map.of(), "nothing")));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private String call(String function, Object... arguments) {
    Function found = (Function) scope.get(function, scope);
    return Context.toString(found.call(context, scope, scope, arguments));
  }

  private static List<String> lines(String text) {
    return text.isEmpty() ? List.of() : Arrays.asList(text.split("\n", -1));
  }

  List<String> beginning() {
    return lines(call("beginning"));
  }

  /** Each movement that could be tried in the state, by its key. */
  SortedMap<String, Tried> tried(List<String> state) {
    SortedMap<String, Tried> all = new TreeMap<>();
    for (String line : lines(call("tried", String.join("\n", state)))) {
      String[] parts = line.split("\t", -1);
      List<Integer> entries = new ArrayList<>();
      if (!parts[2].isEmpty()) {
        Arrays.stream(parts[2].split(",")).map(Integer::valueOf).forEach(entries::add);
      }
      if (all.put(parts[0], new Tried(Integer.parseInt(parts[1]), entries)) != null) {
        throw new AssertionError("twice: " + parts[0]);
      }
    }
    return all;
  }

  List<String> made(List<String> state, String event) {
    return lines(call("made", String.join("\n", state), event));
  }

  @Override
  public void close() {
    Context.exit();
  }
}
