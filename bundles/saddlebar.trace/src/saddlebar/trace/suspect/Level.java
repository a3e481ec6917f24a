package saddlebar.trace.suspect;

/** One value of a factor: mix 12, screen 7, the left back corner. */
public record Level(String factor, String name) implements Comparable<Level> {
    @Override
    public int compareTo(Level other) {
        int byFactor = factor.compareTo(other.factor);
        return byFactor != 0 ? byFactor : name.compareTo(other.name);
    }

    @Override
    public String toString() {
        return factor + " " + name;
    }
}
