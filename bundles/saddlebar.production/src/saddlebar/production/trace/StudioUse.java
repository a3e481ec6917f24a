package saddlebar.production.trace;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import saddlebar.model.commission.Paint;
import saddlebar.model.commission.PriceItem;
import saddlebar.model.commission.Studio;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;
import saddlebar.model.work.Work;

/**
 * What each person used of a studio that several share, and what of it was charged or waived. Paint counts as powder weighed for a mix, a screen as one load, film
 * as one sheet fused, the kiln as the share of its shelf: of a firing's records, those that are the person's. Prices come from the studio's own lists; what has
 * none there is shown and not charged.
 *
 * @param currency of the amounts
 * @param rows     by person, then commission
 */
public record StudioUse(String currency, List<Row> rows) {
    /** Key of the price item for an hour at a bench. */
    public static final String BENCH_HOUR = "bench-hour";
    /** Key of the price item for one load of a screen. */
    public static final String SCREEN_LOAD = "screen-load";
    /** Key of the price item for a whole firing. */
    public static final String FIRING = "firing";
    /** {@code sourceKey} of the records by which use is charged or waived. */
    public static final String SOURCE = "studio-use";

    /**
     * One person's use in one commission.
     *
     * @param paintG    powder weighed, in g
     * @param screens   loads
     * @param film      sheets fused
     * @param firings   whole firings, as the sum of shares
     * @param hours     at the benches, as told
     * @param amount    at the studio's prices
     * @param unpriced  what has no price there
     */
    public record Row(String person, String commission, double paintG, int screens, int film, double firings, double hours, BigDecimal amount,
            List<String> unpriced) {
    }

    /** What was settled with a person. */
    public record Settled(String person, BigDecimal charged, BigDecimal waived) {
    }

    public StudioUse {
        rows = List.copyOf(rows);
    }

    private static final class Sum {
        private double paintG;
        private int screens;
        private int film;
        private double firings;
        private double hours;
        private BigDecimal paint = BigDecimal.ZERO;
        private final Set<String> unpriced = new HashSet<>();
    }

    /**
     * Adds up.
     *
     * @param from   first moment that counts
     * @param until  first moment that does not
     * @param person only this one's; a person sees no other's work
     */
    public static StudioUse of(TraceRoom room, Instant from, Instant until, Optional<String> person, Work work) throws IOException {
        Studio studio = room.studio().studio();
        Map<String, Map<String, Sum>> sums = new TreeMap<>();
        Map<String, Integer> ofFiring = new HashMap<>();
        List<String[]> fires = new ArrayList<>();
        for (TraceRoom.Source source : room.sources()) {
            List<RecordLine> lines = new ArrayList<>();
            Set<String> superseded = new HashSet<>();
            try (RecordReading reading = source.book().read()) {
                reading.forEach(line -> {
                    superseded.addAll(line.supersedes());
                    if (!line.time().isBefore(from) && line.time().isBefore(until) && !line.who().isEmpty()) {
                        lines.add(line);
                    }
                }, work);
            }
            for (RecordLine line : lines) {
                if (!superseded.contains(line.id())) {
                    Sum sum = sums.computeIfAbsent(line.who(), any -> new TreeMap<>()).computeIfAbsent(source.name(), any -> new Sum());
                    add(line, sum, studio);
                    if (line.kind().equals("fire")) {
                        String firing = String.valueOf(line.settings().getOrDefault("firing", line.id()));
                        ofFiring.merge(firing, 1, Integer::sum);
                        fires.add(new String[] {line.who(), source.name(), firing});
                    }
                }
            }
        }
        fires.forEach(fire -> sums.get(fire[0]).get(fire[1]).firings += 1.0 / ofFiring.get(fire[2]));
        List<Row> rows = new ArrayList<>();
        sums.forEach((who, commissions) -> commissions.forEach((commission, sum) -> {
            if ((person.isEmpty() || person.get().equals(who)) && (sum.paintG > 0 || sum.screens > 0 || sum.firings > 0 || sum.hours > 0)) {
                rows.add(row(who, commission, sum, studio));
            }
        }));
        return new StudioUse(studio.getCurrency() == null ? "" : studio.getCurrency(), rows);
    }

    private static void add(RecordLine line, Sum sum, Studio studio) {
        sum.hours += number(line, "hours");
        if (line.kind().equals("mix")) {
            double powderG = number(line, "powder_g") + number(line, "powderG");
            sum.paintG += powderG;
            Object word = line.settings().getOrDefault("paintId", line.settings().get("paint"));
            Optional<BigDecimal> perKg = studio.getPaints().stream().filter(paint -> paint.getId().equals(word) || paint.getName().equals(word))
                    .map(Paint::getPricePerKg).filter(price -> price != null).findFirst();
            if (perKg.isPresent()) {
                sum.paint = sum.paint.add(perKg.get().multiply(BigDecimal.valueOf(powderG)).divide(BigDecimal.valueOf(1000)));
            } else if (powderG > 0) {
                sum.unpriced.add("paint " + (word == null ? "of no name" : word));
            }
        } else if (line.kind().equals("fuse")) {
            sum.screens++;
            sum.film++;
        }
    }

    private static double number(RecordLine line, String name) {
        return line.settings().get(name) instanceof Number number && number.doubleValue() > 0 ? number.doubleValue() : 0;
    }

    private static Row row(String who, String commission, Sum sum, Studio studio) {
        BigDecimal amount = sum.paint;
        amount = amount.add(priced(studio, SCREEN_LOAD, sum.screens, sum));
        amount = amount.add(priced(studio, FIRING, sum.firings, sum));
        amount = amount.add(priced(studio, BENCH_HOUR, sum.hours, sum));
        Optional<BigDecimal> film = studio.getSheetStock().stream().map(stock -> stock.getPricePerSheet()).filter(price -> price != null).findFirst();
        if (film.isPresent()) {
            amount = amount.add(film.get().multiply(BigDecimal.valueOf(sum.film)));
        } else if (sum.film > 0) {
            sum.unpriced.add("film");
        }
        return new Row(who, commission, sum.paintG, sum.screens, sum.film, sum.firings, sum.hours, amount.setScale(2, RoundingMode.HALF_UP),
                sum.unpriced.stream().sorted().toList());
    }

    private static BigDecimal priced(Studio studio, String key, double quantity, Sum sum) {
        if (quantity == 0) {
            return BigDecimal.ZERO;
        }
        Optional<BigDecimal> price = studio.getPriceBook() == null
                ? Optional.empty()
                : studio.getPriceBook().getItems().stream().filter(item -> key.equals(item.getKey())).map(PriceItem::getPrice).filter(one -> one != null)
                        .findFirst();
        if (price.isEmpty()) {
            sum.unpriced.add(key);
            return BigDecimal.ZERO;
        }
        return price.get().multiply(BigDecimal.valueOf(quantity));
    }

    /** What the studio's own records say was charged to each and waived, by name. */
    public static List<Settled> settled(TraceRoom room, Optional<String> person, Work work) throws IOException {
        Map<String, BigDecimal[]> sums = new TreeMap<>();
        Set<String> superseded = new HashSet<>();
        List<RecordLine> lines = new ArrayList<>();
        try (RecordReading reading = room.studio().records().read()) {
            reading.forEach(line -> {
                superseded.addAll(line.supersedes());
                if (line.kind().equals("cost") && SOURCE.equals(line.settings().get("sourceKey"))) {
                    lines.add(line);
                }
            }, work);
        }
        for (RecordLine line : lines) {
            String who = String.valueOf(line.settings().get("person"));
            if (!superseded.contains(line.id()) && (person.isEmpty() || person.get().equals(who))) {
                BigDecimal[] sum = sums.computeIfAbsent(who, any -> new BigDecimal[] {BigDecimal.ZERO, BigDecimal.ZERO});
                int at = Boolean.TRUE.equals(line.settings().get("waived")) ? 1 : 0;
                sum[at] = sum[at].add(new BigDecimal(String.valueOf(line.settings().getOrDefault("amount", "0"))));
            }
        }
        List<Settled> settled = new ArrayList<>();
        sums.forEach((who, sum) -> settled.add(new Settled(who, sum[0], sum[1])));
        return settled;
    }

    public BigDecimal total() {
        return rows.stream().map(Row::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
