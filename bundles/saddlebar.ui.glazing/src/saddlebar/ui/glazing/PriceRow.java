package saddlebar.ui.glazing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import saddlebar.model.commission.PriceBook;
import saddlebar.model.commission.PriceItem;

/**
 * One line of the price book as it is shown: the five that the book holds by name, then its items.
 *
 * @param fixed which of the five, if it is one
 * @param item  the item, if it is one
 */
public record PriceRow(Optional<Fixed> fixed, Optional<PriceItem> item) {
    /** What every book holds by name. */
    public enum Fixed {
        LABOUR, ENERGY, OVERHEAD, MARGIN, TAX
    }

    static List<PriceRow> of(PriceBook book) {
        List<PriceRow> rows = new ArrayList<>();
        for (Fixed fixed : Fixed.values()) {
            rows.add(new PriceRow(Optional.of(fixed), Optional.empty()));
        }
        book.getItems().forEach(item -> rows.add(new PriceRow(Optional.empty(), Optional.of(item))));
        return rows;
    }

    Optional<BigDecimal> price(PriceBook book) {
        if (item.isPresent()) {
            return Optional.ofNullable(item.get().getPrice());
        }
        return Optional.ofNullable(switch (fixed.orElseThrow()) {
            case LABOUR -> book.getLabourPerHour();
            case ENERGY -> book.getEnergyPerKwh();
            case OVERHEAD -> share(book.getOverheadShare());
            case MARGIN -> share(book.getMarginShare());
            case TAX -> share(book.getTaxShare());
        });
    }

    private static BigDecimal share(Double share) {
        return share == null ? null : BigDecimal.valueOf(share);
    }

    /** Whether it is a share of 0 to 1 and not money. */
    boolean isShare() {
        return fixed.filter(one -> one != Fixed.LABOUR && one != Fixed.ENERGY).isPresent();
    }
}
