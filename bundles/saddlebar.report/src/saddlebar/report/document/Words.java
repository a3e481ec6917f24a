package saddlebar.report.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;

/** The words of documents in one language, with its way to write numbers, money and days. */
public final class Words {
    private final Locale locale;
    private final Properties texts;

    private Words(Locale locale, Properties texts) {
        this.locale = locale;
        this.texts = texts;
    }

    /** @param language {@code en} or {@code de} */
    public static Optional<Words> in(String language) {
        String file = switch (language.strip().toLowerCase(Locale.ROOT)) {
            case "en" -> "words.properties";
            case "de" -> "words_de.properties";
            default -> "";
        };
        return file.isEmpty() ? Optional.empty() : Optional.of(new Words(language.strip().equalsIgnoreCase("de") ? Locale.GERMANY : Locale.UK, read(file)));
    }

    private static Properties read(String file) {
        try (InputStream in = Words.class.getResourceAsStream(file)) {
            Properties texts = new Properties();
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public String language() {
        return locale.getLanguage();
    }

    /** A text by its key, with values put in. */
    public String of(String key, Object... values) {
        String text = texts.getProperty(key);
        if (text == null) {
            throw new IllegalArgumentException("there is no text " + key + " in " + locale);
        }
        return new MessageFormat(text, locale).format(values);
    }

    /** The text of a key if there is one, else the word itself: for words that studios make up. */
    public String known(String prefix, String word) {
        String key = prefix + word.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
        return texts.containsKey(key) ? of(key) : word;
    }

    public String number(double value, int decimals) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(value + 0.0);
    }

    /** Such as {@code 560 × 840 mm}; whole mm. */
    public String size(double widthMm, double heightMm) {
        return number(widthMm, 0) + " × " + number(heightMm, 0) + " mm";
    }

    public String money(BigDecimal amount, String currency) {
        NumberFormat format = NumberFormat.getCurrencyInstance(locale);
        Currency unit = Currency.getInstance(currency);
        format.setCurrency(unit);
        format.setMinimumFractionDigits(Math.max(0, unit.getDefaultFractionDigits()));
        format.setMaximumFractionDigits(Math.max(0, unit.getDefaultFractionDigits()));
        return format.format(amount);
    }

    public String day(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(locale).format(day);
    }

    public String shortDay(LocalDate day) {
        return DateTimeFormatter.ISO_LOCAL_DATE.format(day);
    }

    /** Sign between whole number and decimals. */
    char point() {
        return DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
    }
}
