package saddlebar.model.units;

/** Guards of records: a value out of range is our own caller's fault, told with name, range and value. NaN is out of every range. */
public final class Require {
    private Require() {
    }

    public static double within(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(name + " must be " + least + " to " + most + " but is " + value);
        }
        return value;
    }

    public static int within(String name, int value, int least, int most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(name + " must be " + least + " to " + most + " but is " + value);
        }
        return value;
    }

    public static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number but is " + value);
        }
        return value;
    }

    public static String text(String name, String value) {
        if (value == null || value.isBlank()) {
            throw new IllegalArgumentException(name + " must not be empty");
        }
        return value;
    }
}
