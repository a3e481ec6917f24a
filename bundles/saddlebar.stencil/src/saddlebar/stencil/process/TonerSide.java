package saddlebar.stencil.process;

/** Which side of the mesh the toner of the sheet touches. A studio decides it once for each process. */
public enum TonerSide {
    /** The side that lies against the glass when the screen prints. */
    PRINT("print"),
    /** The side on which the squeegee runs. */
    SQUEEGEE("squeegee");

    private final String key;

    TonerSide(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
