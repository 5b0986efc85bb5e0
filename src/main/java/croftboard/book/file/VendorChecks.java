package croftboard.book.file;

import croftboard.book.Ingredient;
import croftboard.book.ListedOffer;
import croftboard.book.Vendor;
import croftboard.book.Vendor.Commitment;
import croftboard.book.Vendor.Offer;
import croftboard.measure.Unit;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Offers, commitments and this week's lists against the ingredients and against each other. */
final class VendorChecks {
    private final Notebook notebook;
    private final Drafts drafts;

    VendorChecks(Notebook notebook, Drafts drafts) {
        this.notebook = notebook;
        this.drafts = drafts;
    }

    void check() {
        for (Vendor vendor : drafts.vendors.values()) {
            vendor.offers().stream().filter(notebook::isSound).forEach(this::offer);
            overlaps(vendor);
            commitments(vendor);
        }
        drafts.lists.values().forEach(list -> list.forEach(this::listed));
        drafts.onHand.stream().filter(notebook::isSound).forEach(counted -> {
            Ingredient ingredient = drafts.ingredients.get(counted.item());
            if (ingredient != null) {
                purchased(ingredient, counted.amount().unit(), notebook.spotOf(counted, "amount"));
            } else if (drafts.recipes.containsKey(counted.item())) {
                component(counted.item(), counted.amount().unit(), notebook.spotOf(counted, "amount"));
            }
        });
    }

    private void offer(Offer offer) {
        Ingredient ingredient = drafts.ingredients.get(offer.item());
        if (ingredient == null) {
            return;
        }
        if (ingredient.free()) {
            notebook.fault(notebook.spotOf(offer), "[" + offer.item() + "] is free and never bought",
                    "leave the offer out, or free: yes in the ingredient");
        }
        purchased(ingredient, offer.holds().unit(), notebook.spotOf(offer, "holds"));
    }

    private void purchased(Ingredient ingredient, Unit unit, Spot spot) {
        if (notebook.isSound(ingredient) && !Weigher.knowsPurchased(ingredient, unit)) {
            notebook.fault(spot, LineChecks.noPurchasedMeasure(ingredient, unit),
                    LineChecks.measureRemedy(unit));
        }
    }

    private void component(String id, Unit unit, Spot spot) {
        boolean weighed = unit.kind() == Unit.Kind.MASS
                || unit.kind() == Unit.Kind.VOLUME && drafts.recipes.get(id).cup().isPresent();
        if (!weighed && notebook.isSound(drafts.recipes.get(id))) {
            notebook.fault(spot, "[" + id + "] cannot be counted by the " + unit, "write a weight"
                    + (unit.kind() == Unit.Kind.VOLUME ? ", or add cup: ... g to the recipe" : ""));
        }
    }

    private record Pack(String item, String pack) { }

    /** One pack may stand in several offers of a vendor, at other prices, but not in the same week. */
    private void overlaps(Vendor vendor) {
        Map<Pack, WeekTable> taken = new HashMap<>();
        for (Offer offer : vendor.offers()) {
            Pack pack = new Pack(offer.item(), offer.pack());
            boolean again = taken.containsKey(pack);
            WeekTable weeks = taken.computeIfAbsent(pack, p -> new WeekTable());
            boolean clash = offer.weeks().stream().map(e -> weeks.take(e.weeks())).toList().stream()
                    .anyMatch(java.util.Optional::isPresent);
            if (again && clash && notebook.isSound(offer)) {
                notebook.fault(notebook.spotOf(offer), "the pack " + Notebook.show(offer.pack()) + " of ["
                        + offer.item()
                        + "] is offered twice in the same weeks",
                        "keep one offer, or give it other weeks or other words");
            }
        }
    }

    private void commitments(Vendor vendor) {
        Map<Pack, WeekTable> taken = new HashMap<>();
        Map<String, Set<String>> packs = packs(vendor);
        boolean offersKnown = offersKnown(vendor);
        for (Commitment commitment : vendor.commitments()) {
            if (!notebook.isSound(commitment)) {
                continue;
            }
            taken.computeIfAbsent(new Pack(commitment.item(), commitment.pack()), p -> new WeekTable())
                    .take(commitment.weeks()).ifPresent(other ->
                    notebook.fault(notebook.spotOf(commitment), commitment.weeks()
                            + " overlaps " + other + " of another commitment to the same pack",
                            "let each week stand once"));
            if (offersKnown) {
                matches(vendor.id(), packs, commitment.item(), commitment.pack(),
                        notebook.spotOf(commitment), notebook.spotOf(commitment, "pack"));
                covered(vendor, commitment);
            }
        }
    }

    /** What the kitchen has promised to take must be there to be taken. */
    private void covered(Vendor vendor, Commitment commitment) {
        WeekTable offered = new WeekTable();
        boolean any = false;
        for (Offer offer : vendor.offers()) {
            if (offer.item().equals(commitment.item()) && offer.pack().equals(commitment.pack())) {
                offer.weeks().forEach(e -> offered.take(e.weeks()));
                any = true;
            }
        }
        String missing = offered.missingOf(commitment.weeks());
        if (any && !missing.isEmpty()) {
            notebook.fault(notebook.spotOf(commitment), "the offer of [" + commitment.item()
                    + "] has no packs in "
                    + missing + ", which the kitchen has promised to take",
                    "shorten the commitment, or add the weeks to the offer");
        }
    }

    /** A vendor with a mistyped offer is not blamed for lacking what was meant. */
    private boolean offersKnown(Vendor vendor) {
        return vendor.offers().stream().allMatch(o -> notebook.isSound(o) && isKnown(o.item()));
    }

    private boolean isKnown(String item) {
        return drafts.ingredients.containsKey(item) || notebook.isUnread(FileKind.INGREDIENTS);
    }

    private static Map<String, Set<String>> packs(Vendor vendor) {
        Map<String, Set<String>> packs = new HashMap<>();
        vendor.offers().forEach(o -> packs.computeIfAbsent(o.item(), i -> new LinkedHashSet<>())
                .add(o.pack()));
        return packs;
    }

    private void matches(String vendor, Map<String, Set<String>> packs, String item, String pack,
            Spot itemSpot, Spot packSpot) {
        Set<String> ofItem = packs.get(item);
        if (ofItem == null) {
            notebook.fault(itemSpot, "[" + vendor + "] has no offer of " + Notebook.show(item),
                    notebook.meant(item, packs.keySet(), "add the offer to farms/" + vendor + ".yaml"));
        } else if (!ofItem.contains(pack)) {
            notebook.fault(packSpot, "[" + vendor + "] does not offer [" + item + "] in the pack "
                    + Notebook.show(pack),
                    "its packs are " + String.join("; ", ofItem));
        }
    }

    private final Map<String, Map<String, Set<String>>> packsOf = new HashMap<>();

    private void listed(ListedOffer row) {
        Vendor vendor = drafts.vendors.get(row.vendor());
        if (vendor == null || !notebook.isSound(row) || !notebook.isSound(vendor)) {
            return;
        }
        if (offersKnown(vendor) && isKnown(row.item())) {
            matches(vendor.id(), packsOf.computeIfAbsent(vendor.id(), v -> packs(vendor)), row.item(),
                    row.pack(),
                    notebook.spotOf(row, "item"), notebook.spotOf(row, "pack"));
        }
        if (vendor.deliveries().stream().noneMatch(d -> d.day() == row.delivery().getDayOfWeek())) {
            List<String> days = Values.DAYS.entrySet().stream().filter(e -> vendor.deliveries().stream()
                    .anyMatch(d -> d.day() == e.getValue())).map(Map.Entry::getKey).toList();
            notebook.fault(notebook.spotOf(row, "delivery"), "[" + vendor.id() + "] does not deliver on "
                    + row.delivery(),
                    "its delivery days are " + String.join(", ", days));
        }
    }
}
