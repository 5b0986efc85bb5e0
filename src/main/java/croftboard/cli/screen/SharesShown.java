package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.ledger.share.Definitions;
import croftboard.ledger.share.Money;
import croftboard.ledger.share.Share;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The ledger's shares with what their screens need beside them.
 *
 * @param shares under each definition, the one that was asked for first
 * @param target of the days; empty: none was promised, or it was promised by another definition
 * @param by into what the money is divided: vendor, crop, dish, month; empty: not asked
 * @param groups the asked share's money by id of vendor, ingredient or dish, or by month
 */
public record SharesShown(Book book, Definitions definitions, List<Share> shares, Optional<Ratio> target, Optional<String> by,
        Map<String, Money> groups) {
    Share asked() {
        return shares.get(0);
    }

    Names names() {
        return new Names(book);
    }

    boolean inForce(Share share) {
        return definitions.inForce().equals(Optional.of(share.definition().id()));
    }

    /** {@code 41.0 %}. */
    static String percent(Optional<Ratio> share) {
        return share.map(ShareScreen::percent).orElse("-");
    }

    static String range(Money money) {
        return money.lowCents() == money.local() && money.highCents() == money.local() ? percent(money.share())
                : percent(money.low()) + " to " + percent(money.high());
    }

    static String dollars(long cents) {
        return new Cents(cents).toString();
    }

    /** The name of a group's key. */
    String group(String key) {
        String words = switch (by.orElse("")) {
            case "vendor" -> names().vendor(key);
            case "crop" -> key.isEmpty() ? "(not matched to an ingredient)" : names().item(key);
            case "dish" -> key.isEmpty() ? "(in no dish that was sold)" : names().recipe(key);
            default -> key;
        };
        return words;
    }
}
