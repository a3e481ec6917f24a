package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import saddlebar.materials.money.DatedPrice;
import saddlebar.materials.money.Prices;
import saddlebar.model.commission.PriceBook;
import saddlebar.model.commission.PriceItem;
import saddlebar.model.commission.Studio;
import saddlebar.model.problem.Refusal;

/** Reads the studio's price book. The book's own fields have always held; an item of the same word and a day replaces them from that day. */
public final class BookReader {
    static final String OVERHEAD = "overhead-share";
    static final String MARGIN = "margin-share";
    static final String TAX = "tax-share";

    private BookReader() {
    }

    public static Prices read(Studio studio, LocalDate day, String currency) {
        PriceBook book = studio.getPriceBook();
        if (book == null) {
            throw new Refusal("studio", "it has no price book", "put one in, or start from the studio tables");
        }
        List<DatedPrice> prices = new ArrayList<>();
        String own = studio.getCurrency();
        add(prices, "labour", "hour", book.getLabourPerHour(), own);
        add(prices, "energy", "kWh", book.getEnergyPerKwh(), own);
        add(prices, OVERHEAD, "share of cost", share(book.getOverheadShare()), own);
        add(prices, MARGIN, "share of price", share(book.getMarginShare()), own);
        add(prices, TAX, "share of price", share(book.getTaxShare()), own);
        for (PriceItem item : book.getItems()) {
            if (item.getKey() != null && item.getPrice() != null) {
                prices.add(DatedPrice.of(item.getKey(), Optional.ofNullable(item.getFrom()),
                        Optional.ofNullable(item.getCurrency()).filter(code -> !code.isBlank()),
                        item.getUnit() == null ? "" : item.getUnit(), item.getPrice(), own));
            }
        }
        return new Prices(day, own, currency, prices);
    }

    private static BigDecimal share(Double share) {
        return share == null ? null : BigDecimal.valueOf(share);
    }

    private static void add(List<DatedPrice> prices, String word, String unit, BigDecimal price, String currency) {
        if (price != null) {
            prices.add(new DatedPrice(word, LocalDate.MIN, currency, unit, price));
        }
    }
}
