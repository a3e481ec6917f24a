package saddlebar.ui.glazing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.PriceBook;
import saddlebar.model.commission.PriceItem;
import saddlebar.model.problem.Refusal;
import saddlebar.materials.money.Currencies;
import saddlebar.ui.desk.Edits;

/** The price book as it is typed in: each change one step that can be taken back; what cannot be is said in words. Knows no widget. */
public final class PriceSheet {
    private static final BigDecimal MOST = new BigDecimal("1e9");

    private final PriceBook book;
    private final Edits edits;

    public PriceSheet(PriceBook book, Edits edits) {
        this.book = book;
        this.edits = edits;
    }

    /** @return what is wrong with what was typed; empty if it was taken */
    public Optional<String> takePrice(PriceRow row, String typed) {
        BigDecimal price;
        try {
            String plain = typed.strip().replace("%", "").strip();
            plain = plain.indexOf(',') >= 0 && plain.indexOf('.') < 0 ? plain.replace(',', '.') : plain;
            price = new BigDecimal(plain);
            price = typed.contains("%") ? price.scaleByPowerOfTen(-2) : price;
        } catch (NumberFormatException noNumber) {
            return Optional.of(NLS.bind(Messages.Wrong_price, typed.strip()));
        }
        BigDecimal most = row.isShare() ? BigDecimal.ONE : MOST;
        if (price.signum() < 0 || price.compareTo(most) > 0) {
            return Optional.of(NLS.bind(row.isShare() ? Messages.Wrong_share : Messages.Wrong_price, typed.strip()));
        }
        BigDecimal taken = price;
        edits.perform(Messages.Edit_price, book, () -> set(row, taken));
        return Optional.empty();
    }

    private void set(PriceRow row, BigDecimal price) {
        row.item().ifPresent(item -> item.setPrice(price));
        row.fixed().ifPresent(fixed -> {
            switch (fixed) {
                case LABOUR -> book.setLabourPerHour(price);
                case ENERGY -> book.setEnergyPerKwh(price);
                case OVERHEAD -> book.setOverheadShare(price.doubleValue());
                case MARGIN -> book.setMarginShare(price.doubleValue());
                case TAX -> book.setTaxShare(price.doubleValue());
                default -> throw new IllegalStateException("no such line: " + fixed);
            }
        });
    }

    /** First day on which an item's price holds, as 2026-01-31; empty for always. */
    public Optional<String> takeDay(PriceItem item, String typed) {
        try {
            LocalDate day = typed.isBlank() ? null : LocalDate.parse(typed.strip());
            edits.perform(Messages.Edit_price, item, () -> item.setFrom(day));
            return Optional.empty();
        } catch (DateTimeParseException noDay) {
            return Optional.of(NLS.bind(Messages.Wrong_day, typed.strip()));
        }
    }

    /** A code of ISO 4217; empty for the studio's currency. */
    public Optional<String> takeCurrency(PriceItem item, String typed) {
        String code = typed.strip().toUpperCase(Locale.ROOT);
        try {
            if (!code.isEmpty()) {
                Currencies.decimals(code);
            }
            edits.perform(Messages.Edit_price, item, () -> item.setCurrency(code.isEmpty() ? null : code));
            return Optional.empty();
        } catch (Refusal unknown) {
            return Optional.of(unknown.getMessage());
        }
    }

    /** The same item from a day on: the old price stays for the days before. */
    public PriceItem from(PriceItem item, LocalDate day) {
        PriceItem later = CommissionFactory.eINSTANCE.createPriceItem();
        later.setKey(item.getKey());
        later.setName(item.getName());
        later.setUnit(item.getUnit());
        later.setPrice(item.getPrice());
        later.setCurrency(item.getCurrency());
        later.setFrom(day);
        edits.perform(Messages.Edit_addPrice, book, () -> book.getItems().add(book.getItems().indexOf(item) + 1, later));
        return later;
    }

    public void remove(PriceItem item) {
        edits.perform(Messages.Edit_removePrice, book, () -> book.getItems().remove(item));
    }
}
