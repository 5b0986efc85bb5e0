package croftboard.bench;

import java.io.IOException;

/**
 * {@code Bench FOLDER [all | part ...] [--seconds 5,20] [--seeds 1-20] [--quick] [--print]}: measures the parts named, or
 * all, and writes their sections of {@code docs/benchmarks.md}; with {@code --print} only prints them. Progress goes to the
 * standard error.
 */
public final class Bench {
    private Bench() { }

    public static void main(String[] args) throws IOException, InterruptedException {
        Request request = Request.of(args);
        Sections document = new Sections(request.folder().resolve("docs/benchmarks.md"));
        for (Part part : request.parts()) {
            String load = Machine.load();
            long t0 = System.nanoTime();
            String figures = part.figures(request);
            long minutes = Math.round((System.nanoTime() - t0) / 6e10);
            String section = Machine.line(request.command(part), load) + " Took " + Math.max(1, minutes)
                    + " min.\n\n" + figures;
            System.out.println(section);
            if (!request.print()) {
                document.put(part.word(), section);
            }
        }
    }

    /** Tells on the standard error how far it is. */
    static void tell(String what) {
        System.err.println(what);
    }
}
