package croftboard.paper;

import java.util.List;

/** Makes all sheets of one kind. The same context gives the same sheets, in the same order. */
public interface SheetMaker {
    SheetKind kind();

    /** None when the week has nothing for it; {@link PaperContext#filters()} are the maker's to keep. */
    List<Sheet> make(PaperContext context);
}
