package saddlebar.ui;

import java.text.NumberFormat;
import java.util.Locale;

import saddlebar.model.units.Units;
import saddlebar.ui.easel.RulerScale;

/** Writes lengths and areas for people, in the units they chose. */
public final class Lengths {
    private static final double MM2_PER_CM2 = 100;

    private final RulerScale.Unit unit;
    private final NumberFormat numbers;

    public Lengths(RulerScale.Unit unit, Locale locale) {
        this.unit = unit;
        this.numbers = NumberFormat.getNumberInstance(locale);
        numbers.setGroupingUsed(false);
    }

    /** Reads lengths that are typed, in the same units. */
    public TypedLength typed() {
        return new TypedLength(unit);
    }

    /** The number alone. */
    public String plain(double mm) {
        boolean inches = unit == RulerScale.Unit.INCH;
        numbers.setMaximumFractionDigits(inches ? 2 : 1);
        numbers.setMinimumFractionDigits(0);
        return numbers.format(inches ? mm / Units.MM_PER_INCH : mm);
    }

    /** With its unit. */
    public String words(double mm) {
        return plain(mm) + (unit == RulerScale.Unit.INCH ? " in" : " mm");
    }

    /** Width by height, with the unit once. */
    public String size(double widthMm, double heightMm) {
        return plain(widthMm) + " × " + words(heightMm);
    }

    /** An area in cm2 or square inches. */
    public String area(double mm2) {
        boolean inches = unit == RulerScale.Unit.INCH;
        numbers.setMaximumFractionDigits(1);
        return inches ? numbers.format(mm2 / (Units.MM_PER_INCH * Units.MM_PER_INCH)) + " sq in" : numbers.format(mm2 / MM2_PER_CM2) + " cm²";
    }
}
