package croftboard.book.file;

import croftboard.book.Kitchen;
import croftboard.book.Kitchen.ServiceLine;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The kitchen against what it serves: files that must be there, demand for each line and day, the
 * receiving station.
 */
final class KitchenChecks {
    private final Notebook notebook;
    private final Drafts drafts;

    KitchenChecks(Notebook notebook, Drafts drafts) {
        this.notebook = notebook;
        this.drafts = drafts;
    }

    /**
     * Notes the files that no book, or no working kitchen, can do without; what they would define
     * is not missed again.
     */
    void files(java.util.Set<FileKind> present, boolean worthOnly) {
        if (!present.contains(FileKind.KITCHEN)) {
            missing(FileKind.KITCHEN, FileKind.KITCHEN_PATH, "there is no kitchen");
        }
        if (!present.contains(FileKind.RECIPES)) {
            missing(FileKind.RECIPES, "recipes/", "there is no recipe");
        }
        if (!worthOnly && !present.contains(FileKind.DEMAND)) {
            missing(FileKind.DEMAND, "seasons/demand.yaml", "nothing says how many portions a line sells");
        }
        boolean seasonsUsed = notebook.pointers().stream().anyMatch(p -> p.to() == Pointer.To.SEASON);
        if (seasonsUsed && !present.contains(FileKind.SEASONS)) {
            missing(FileKind.SEASONS, "seasons/seasons.yaml",
                    "recipes name seasons, but nothing says when they are");
        }
    }

    private void missing(FileKind kind, String path, String wrong) {
        notebook.unread(kind);
        notebook.fault(Spot.whole(path), wrong, "write this file; docs/book.md shows its form");
    }

    void check(boolean worthOnly) {
        drafts.kitchen.ifPresent(kitchen -> {
            if (!worthOnly && !notebook.isUnread(FileKind.DEMAND)) {
                kitchen.lines().stream().filter(l -> !l.id().isEmpty()).forEach(l -> demand(kitchen, l));
            }
            kitchen.receiving().ifPresent(r -> receiving(r.station()));
        });
    }

    private void demand(Kitchen kitchen, ServiceLine line) {
        Drafts.DemandDraft demand = drafts.demand.get(line.id());
        if (demand == null) {
            notebook.fault(notebook.spotOf(line), "the line [" + line.id() + "] has no demand",
                    "add it to seasons/demand.yaml under lines");
            return;
        }
        List<DayOfWeek> without = kitchen.open().stream().filter(d -> !demand.written().contains(d))
                .toList();
        if (!without.isEmpty()) {
            notebook.fault(demand.spot(), "the demand of [" + line.id() + "] has no portions for "
                    + Values.DAYS.entrySet().stream()
                    .filter(e -> without.contains(e.getValue())).map(Map.Entry::getKey)
                    .collect(Collectors.joining(", ")),
                    "give every open day its portions; 0 is a number too");
        }
    }

    private void receiving(String station) {
        for (Pointer pointer : notebook.pointers()) {
            if (pointer.to() == Pointer.To.STATION && pointer.from().equals(StepReader.FROM)
                    && pointer.word().equals(station)) {
                notebook.fault(pointer.spot(), "[" + station
                        + "] receives deliveries and does no recipe's work",
                        "name another station, or let another one receive");
            }
        }
    }
}
