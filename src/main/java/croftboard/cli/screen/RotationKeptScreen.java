package croftboard.cli.screen;

import croftboard.plan.RotationKept;

/** What the plan kept of its week in the rotation, and why the rest was changed. */
public final class RotationKeptScreen implements Screen {
    private final Shown shown;
    private final RotationKept kept;

    public RotationKeptScreen(Shown shown, RotationKept kept) {
        this.shown = shown;
        this.kept = kept;
    }

    @Override
    public String name() {
        return "rotation";
    }

    @Override
    public void print(Page page) {
        page.heading("Against the rotation " + kept.rotation());
        page.say(kept.kept() + " of the " + kept.possible() + " dishes that could still stand there are kept. Each change costs "
                + shown.book().kitchen().promises().change() + " before it is made; the worth of this plan leaves that out."
                + (kept.note().isEmpty() ? "" : " " + kept.note()));
        if (!kept.changes().isEmpty()) {
            TextTable table = new TextTable(TextTable.Column.mark("place"), TextTable.Column.words("in place of"),
                    TextTable.Column.words("stands"), TextTable.Column.words("because"));
            kept.changes().forEach(c -> table.row(c.slot(), shown.names().recipe(c.was()),
                    c.is().map(shown.names()::recipe).orElse("(nothing)"), c.why()));
            page.gap();
            page.table(table);
        }
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("slot", "was", "is", "why");
        kept.changes().forEach(c -> rows.add(c.slot(), c.was(), c.is(), c.why()));
        return rows;
    }
}
