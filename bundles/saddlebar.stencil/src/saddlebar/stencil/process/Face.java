package saddlebar.stencil.process;

/** Which face of the glass is painted. The cartoon is seen from the interior. */
public enum Face {
    INTERIOR("interior"), EXTERIOR("exterior");

    private final String key;

    Face(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
