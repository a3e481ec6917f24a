package saddlebar.trace.suspect;

import java.util.Arrays;

/** Some of the units, by their numbers. Costs memory for those alone: most levels of a long record were met by few. Equal if they hold the same. */
final class UnitSet {
    private final int[] ascending;
    private final int hash;

    private UnitSet(int[] ascending) {
        this.ascending = ascending;
        this.hash = Arrays.hashCode(ascending);
    }

    int size() {
        return ascending.length;
    }

    /** Numbers, ascending; not to be changed. */
    int[] units() {
        return ascending;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof UnitSet set && set.hash == hash && Arrays.equals(set.ascending, ascending);
    }

    @Override
    public int hashCode() {
        return hash;
    }

    /** Gathers numbers that are told in ascending order. */
    static final class Gathering {
        private int[] numbers = new int[4];
        private int size;

        void add(int unit) {
            if (size == numbers.length) {
                numbers = Arrays.copyOf(numbers, 2 * size);
            }
            numbers[size++] = unit;
        }

        UnitSet done() {
            return new UnitSet(Arrays.copyOf(numbers, size));
        }
    }
}
