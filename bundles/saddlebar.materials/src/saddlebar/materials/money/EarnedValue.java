package saddlebar.materials.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Where work stands against its dates and its money, by milestones: planned value PV is what should be done by a day, earned value EV what is done, both at
 * the budget; with the actual cost AC, CPI = EV/AC and SPI = EV/PV, and the whole will come to budget/CPI if it goes on so. Definitions: ISO 21508:2018 and
 * ANSI/EIA-748 (from memory of both).
 *
 * @param budget  cost of the whole as estimated
 * @param planned PV
 * @param earned  EV
 * @param actual  AC
 */
public record EarnedValue(BigDecimal budget, BigDecimal planned, BigDecimal earned, BigDecimal actual) {

    /**
     * A step of the work.
     *
     * @param share of all work, 0 to 1
     * @param due   when it should be reached
     * @param done  when it was
     */
    public record Step(String name, BigDecimal share, Optional<LocalDate> due, Optional<LocalDate> done) {
        public Step {
            if (share.signum() < 0 || share.compareTo(BigDecimal.ONE) > 0) {
                throw new IllegalArgumentException("the share of '" + name + "' must be 0 to 1 but is " + share);
            }
        }
    }

    /** Empty where no step has a share; shares that sum to another whole than 1 are taken in proportion. */
    public static Optional<EarnedValue> of(List<Step> steps, LocalDate day, BigDecimal budget, BigDecimal actual, Rounding rounding) {
        BigDecimal all = steps.stream().map(Step::share).reduce(BigDecimal.ZERO, BigDecimal::add);
        if (all.signum() == 0) {
            return Optional.empty();
        }
        BigDecimal planned = steps.stream().filter(step -> step.due().filter(due -> !due.isAfter(day)).isPresent()).map(Step::share).reduce(BigDecimal.ZERO,
                BigDecimal::add);
        BigDecimal earned = steps.stream().filter(step -> step.done().filter(done -> !done.isAfter(day)).isPresent()).map(Step::share).reduce(BigDecimal.ZERO,
                BigDecimal::add);
        return Optional.of(new EarnedValue(rounding.cost(budget), rounding.cost(budget.multiply(planned).divide(all, MathContext.DECIMAL64)),
                rounding.cost(budget.multiply(earned).divide(all, MathContext.DECIMAL64)), rounding.cost(actual)));
    }

    /** Worth of what is done for each unit of money spent; empty before anything was spent. */
    public Optional<Double> costIndex() {
        return actual.signum() == 0 ? Optional.empty() : Optional.of(earned.divide(actual, MathContext.DECIMAL64).doubleValue());
    }

    /** What is done for each unit that should be done; empty before anything should be. */
    public Optional<Double> scheduleIndex() {
        return planned.signum() == 0 ? Optional.empty() : Optional.of(earned.divide(planned, MathContext.DECIMAL64).doubleValue());
    }

    /** What the whole will come to if it goes on so. */
    public Optional<BigDecimal> forecast(Rounding rounding) {
        return earned.signum() == 0 ? Optional.empty() : Optional.of(rounding.cost(budget.multiply(actual).divide(earned, MathContext.DECIMAL64)));
    }
}
