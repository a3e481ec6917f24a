package saddlebar.stencil.code;

/** How the rows of a picture lie in a file; one for a whole picture, since a TIFF has one compression and an image of a PDF one chain of filters. */
enum BitPacking {
    /** ITU-T T.6. */
    T6("T.6"),
    /** Rows of whole bytes as they are. */
    PLAIN("none"),
    /** Those in one zlib stream a strip (RFC 1950). */
    DEFLATE("deflate");

    private final String word;

    BitPacking(String word) {
        this.word = word;
    }

    /** As answers and records have it. */
    String word() {
        return word;
    }
}
