package croftboard.book.file;

import java.util.List;

/** The YAML parser's complaints in a cook's words. */
record YamlProblem(String wrong, String right) {
    private static final String QUOTES = "put \"quotes\" around the text";
    private static final List<Known> KNOWN = List.of(
            new Known("TAB", "a tab where spaces belong", "indent with spaces, never with tabs"),
            new Known("mapping values are not allowed", "a colon where no key can stand",
                    "put \"quotes\" around a text that holds a colon, or line the key up with its "
                    + "neighbours"),
            new Known("could not find expected ':'", "a line that is no key: value",
                    "write key: value, or indent the line under its key"),
            new Known("expected <block end>, but found ','", "a comma outside of brackets", QUOTES),
            new Known("expected <block end>", "this does not fit under the lines above",
                    "line it up with its neighbours; " + QUOTES + " when it begins with one"),
            new Known("expected ',' or '}'", "a { that is not closed, or a comma that is missing",
                    "close it with }; " + QUOTES + " when it holds a bracket or a colon"),
            new Known("expected ',' or ']'", "a [ that is not closed, or a comma that is missing",
                    "close it with ]; " + QUOTES + " when it holds a bracket or a colon"),
            new Known("expected the node content", "nothing is written where a value belongs",
                    "write the value; " + QUOTES + " when it begins with , : ? or a bracket"),
            new Known("cannot start any token", "a text that begins with a sign of its own meaning",
            QUOTES),
            new Known("escape", "a backslash that means nothing",
            "use 'single quotes', or write the backslash twice"),
            new Known("unexpected end of stream", "a quote that is never closed", "close it"),
            new Known("expected '<document start>'", "this stands outside of what the file began with",
                    "line it up with the lines above"),
            new Known("chomping or indentation",
            "a | or > that begins a text of several lines, but is not alone", QUOTES),
            new Known("alphabetic or numeric character", "a * or & with no name behind it", QUOTES),
            new Known("sequence entries are not allowed", "a dash where no list can stand", QUOTES));

    private record Known(String sign, String wrong, String right) { }

    static YamlProblem of(String complaint) {
        return KNOWN.stream().filter(k -> complaint.contains(k.sign())).findFirst()
                .map(k -> new YamlProblem(k.wrong(), k.right()))
                .orElse(new YamlProblem("this is no YAML: " + Notebook.show(complaint),
                        "check quotes, brackets and indentation at this place"));
    }
}
