package croftboard.paper.file;

import croftboard.paper.Sheet;
import java.util.Optional;

/** What stands on every page beside the sheet itself. */
interface Imprint {
    /** The first line of the page; empty when all is well. */
    Optional<String> told(Sheet sheet);

    String title(Sheet sheet);

    /** What the sheet was made from, short. */
    String plan();

    String origin();
}
