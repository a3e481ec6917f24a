package saddlebar.materials.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A price paid in parts by milestones. Parts are whole numbers of shares, so that a third is exactly a third; each is rounded down to the minor unit and
 * the last takes the rest, so that the parts sum to the price.
 *
 * @param milestones when each is due
 * @param shares     in how many shares each, 0 or more; 100 in all for per cents, 3 for thirds
 */
public record Deposits(List<String> milestones, List<Integer> shares) {
    /** A third each at deposit, approval and completion (common practice, no source). */
    public static final Deposits THIRDS = new Deposits(List.of("deposit", "approval", "completion"), List.of(1, 1, 1));

    /** What is due at a milestone. */
    public record Part(String milestone, BigDecimal amount) {
    }

    public Deposits {
        milestones = List.copyOf(milestones);
        shares = List.copyOf(shares);
        if (milestones.isEmpty() || milestones.size() != shares.size() || shares.stream().anyMatch(share -> share < 0)
                || shares.stream().mapToLong(Integer::longValue).sum() == 0) {
            throw new IllegalArgumentException("shares must be one for each milestone, none below 0, not all 0, but are " + shares);
        }
    }

    /** @param percents must sum to 100 */
    public static Deposits percent(List<String> milestones, List<Integer> percents) {
        int sum = percents.stream().mapToInt(Integer::intValue).sum();
        if (sum != 100) {
            throw new IllegalArgumentException("percents must sum to 100 but sum to " + sum);
        }
        return new Deposits(milestones, percents);
    }

    public List<Part> of(BigDecimal price, Rounding rounding) {
        BigDecimal all = BigDecimal.valueOf(shares.stream().mapToLong(Integer::longValue).sum());
        BigDecimal open = rounding.cost(price);
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < milestones.size() - 1; i++) {
            BigDecimal part = rounding.cost(price).multiply(BigDecimal.valueOf(shares.get(i))).divide(all, rounding.decimals(), RoundingMode.DOWN);
            parts.add(new Part(milestones.get(i), part));
            open = open.subtract(part);
        }
        parts.add(new Part(milestones.get(milestones.size() - 1), open));
        return parts;
    }
}
