package croftboard.book.file;

/**
 * One change to the small kitchen and the one fault that it must give.
 *
 * @param name what is broken
 * @param after the new text, the expected place of the fault marked by \u00ab
 * @param elsewhere where the fault is expected when not inside the change: a marked text, or an empty one
 * @param elsewherePath the file of that text
 * @param wrong part of what the fault calls wrong
 * @param right part of its remedy
 */
record FaultCase(String name, String path, String before, String after, String elsewherePath,
        String elsewhere,
        String wrong, String right) {
    FaultCase(String name, String path, String before, String after, String wrong, String right) {
        this(name, path, before, after, path, "", wrong, right);
    }

    FaultCase expecting(String marked) {
        return new FaultCase(name, path, before, after, path, marked, wrong, right);
    }

    FaultCase atKitchen(String marked) {
        return new FaultCase(name, path, before, after, "kitchen/kitchen.yaml", marked, wrong, right);
    }

    void holds() {
        SmallKitchen kitchen = new SmallKitchen().change(path, before, after);
        if (!elsewhere.isEmpty()) {
            kitchen.expectAt(elsewherePath, elsewhere);
        }
        kitchen.hasOneFault(wrong, right);
    }

    @Override
    public String toString() {
        return name;
    }
}
