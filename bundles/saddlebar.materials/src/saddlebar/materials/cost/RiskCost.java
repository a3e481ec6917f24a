package saddlebar.materials.cost;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

import org.osgi.service.component.annotations.Component;

import saddlebar.materials.job.CostJob;
import saddlebar.materials.money.Prices;

/** Pieces that break or must be made again: a share of all before it, by the studio's own records where they tell it, else 0.05 where the book has no {@code risk-share} (studio setting, no source). */
@Component(service = CostSource.class)
public final class RiskCost implements CostSource {
    private static final BigDecimal SHARE = new BigDecimal("0.05");
    private static final int DIGITS = 4;
    private static final Spread RECORDED = new Spread(0.3, 2.5);
    private static final Spread SPREAD = new Spread(0.1, 4);

    @Override
    public String key() {
        return "risk";
    }

    @Override
    public int order() {
        return 90;
    }

    @Override
    public List<ReckonedLine> reckon(CostJob job, Prices prices, List<ReckonedLine> before) {
        BigDecimal sum = before.stream().map(ReckonedLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal share = job.hints().riskShare().map(told -> BigDecimal.valueOf(told).setScale(DIGITS, RoundingMode.HALF_EVEN))
                .orElseGet(() -> prices.number("risk-share", SHARE, "0", "1"));
        if (sum.signum() == 0 || share.signum() == 0) {
            return List.of();
        }
        return List.of(ReckonedLine.of(key(), "breakage and remaking", "", share.doubleValue(), "share of cost", sum, prices.rounding(),
                job.hints().riskShare().isPresent() ? RECORDED : SPREAD));
    }
}
