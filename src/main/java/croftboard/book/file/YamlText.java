package croftboard.book.file;

import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * YAML text to nodes. The tree is grown from the parser's events, so nothing is resolved, expanded
 * or built on the way.
 */
final class YamlText {
    private final String file;
    private final Notebook notebook;

    YamlText(String file, Notebook notebook) {
        this.file = file;
        this.notebook = notebook;
    }

    /**
     * The root of the only document; {@link Node.Gone} for a file without any content.
     * Empty when the text is no YAML, with the fault noted.
     */
    Optional<Node> read(String text) {
        NodeGrower grower = new NodeGrower(file, notebook);
        try {
            for (Event event : new Parse(settings()).parseString(text)) {
                if (!grower.take(event)) {
                    return Optional.empty();
                }
            }
            return Optional.of(grower.root());
        } catch (MarkedYamlEngineException e) {
            Spot spot = e.getProblemMark().map(this::spot).orElse(Spot.whole(file));
            YamlProblem problem = YamlProblem.of(e.getProblem() == null ? "" : e.getProblem());
            notebook.fault(spot, problem.wrong(), problem.right());
        } catch (ReaderException e) {
            int end = Math.max(0, Math.min(text.length(), text.offsetByCodePoints(0,
                    Math.min(e.getPosition(), text.codePointCount(0, text.length())))));
            notebook.fault(Text.endOf(file, text.substring(0, end)),
                    "a control character, which no text holds", "delete it");
        } catch (YamlEngineException e) {
            notebook.fault(Spot.whole(file), "this is no YAML", "check quotes, brackets and indentation");
        }
        return Optional.empty();
    }

    private LoadSettings settings() {
        return LoadSettings.builder().setLabel(file).setMaxAliasesForCollections(0)
                .setCodePointLimit(Text.MOST_BYTES + 1).build();
    }

    private Spot spot(Mark mark) {
        return new Spot(file, mark.getLine() + 1, mark.getColumn() + 1);
    }
}
