package saddlebar.report.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.osgi.service.component.annotations.Component;

import saddlebar.report.document.Leaf.Column;

/** What it costs the client: window by window, tax, total, and what is due when. */
@Component(service = ReportSection.class)
public final class PriceSection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.PROPOSAL, ReportKind.PROGRESS);
    }

    @Override
    public int order() {
        return 400;
    }

    @Override
    public boolean speaks(ReportMatter matter) {
        return matter.money().isPresent();
    }

    @Override
    public void write(ReportMatter matter, Leaf leaf) {
        Words words = leaf.words();
        ReportMatter.Money money = matter.money().orElseThrow();
        leaf.heading(words.of(money.number().isEmpty() ? "price.estimate" : "price.quote", money.number()));
        Map<String, Map<String, BigDecimal>> byWindow = new TreeMap<>(
                Comparator.comparing((String window) -> window.isEmpty()).thenComparing(Comparator.naturalOrder()));
        for (ReportMatter.Money.Line line : money.lines()) {
            byWindow.computeIfAbsent(line.window(), window -> new LinkedHashMap<>()).merge(words.known("source.", group(line.source())), line.amount(),
                    BigDecimal::add);
        }
        List<List<String>> rows = new ArrayList<>();
        byWindow.forEach((window, lines) -> {
            BigDecimal sum = lines.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
            rows.add(List.of(window.isEmpty() ? words.of("whole.commission") : name(matter, window), String.join(", ", lines.keySet()),
                    words.money(sum, money.currency())));
        });
        List<List<String>> sums = new ArrayList<>();
        if (money.tax().signum() != 0) {
            sums.add(List.of(words.of("net"), "", words.money(money.net(), money.currency())));
            sums.add(List.of(words.of("tax"), "", words.money(money.tax(), money.currency())));
        }
        sums.add(List.of(words.of("total"), "", words.money(money.total(), money.currency())));
        leaf.table(List.of(words.of("for"), words.of("what.it.holds"), words.of("amount")), List.of(Column.TEXT, Column.TEXT, Column.NUMBER), rows, sums);
        if (money.low().isPresent() && money.high().isPresent()) {
            leaf.remark(words.of("price.range", words.money(money.low().get(), money.currency()), words.money(money.high().get(), money.currency())));
        }
        money.validUntil().ifPresent(day -> leaf.paragraph(words.of("valid.until", words.day(day))));
        if (!money.parts().isEmpty()) {
            leaf.subheading(words.of("due"));
            leaf.table(List.of(words.of("when"), words.of("amount")), List.of(Column.TEXT, Column.NUMBER),
                    money.parts().stream().map(part -> List.of(words.known("milestone.", part.milestone()), words.money(part.amount(), money.currency())))
                            .toList());
        }
    }

    /** What a client calls the studio's sources of cost. */
    private static String group(String source) {
        return switch (source) {
            case "glass" -> "glass";
            case "paint", "sheets", "screens" -> "painting";
            case "metal" -> "metal";
            case "fixing" -> "fixing";
            default -> "work";
        };
    }

    private static String name(ReportMatter matter, String window) {
        String title = matter.windows().stream().filter(w -> window.equals(w.getName())).map(w -> Leaf.text(w.getTitle())).findFirst().orElse("");
        return (window + "  " + title).strip();
    }
}
