package saddlebar.stencil.code;

/** Numbers of the fields of a TIFF directory that a bitonal sheet has (TIFF 6.0, sections 3, 8, 11), and of the types of their values. */
final class TiffTag {
    static final int NEW_SUBFILE_TYPE = 254;
    static final int IMAGE_WIDTH = 256;
    static final int IMAGE_LENGTH = 257;
    static final int BITS_PER_SAMPLE = 258;
    static final int COMPRESSION = 259;
    static final int PHOTOMETRIC = 262;
    static final int FILL_ORDER = 266;
    static final int DOCUMENT_NAME = 269;
    static final int IMAGE_DESCRIPTION = 270;
    static final int STRIP_OFFSETS = 273;
    static final int ORIENTATION = 274;
    static final int SAMPLES_PER_PIXEL = 277;
    static final int ROWS_PER_STRIP = 278;
    static final int STRIP_BYTE_COUNTS = 279;
    static final int X_RESOLUTION = 282;
    static final int Y_RESOLUTION = 283;
    static final int T4_OPTIONS = 292;
    static final int T6_OPTIONS = 293;
    static final int RESOLUTION_UNIT = 296;
    static final int SOFTWARE = 305;
    static final int PREDICTOR = 317;
    static final int TILE_WIDTH = 322;
    /** XMP, by ISO 16684-1 and the TIFF registry; bytes of UTF-8. */
    static final int XMP = 700;

    static final int BYTE = 1;
    static final int ASCII = 2;
    static final int SHORT = 3;
    static final int LONG = 4;
    static final int RATIONAL = 5;
    /** 8 bytes, in BigTIFF only. */
    static final int LONG8 = 16;

    static final int COMPRESSION_NONE = 1;
    static final int COMPRESSION_RUNS = 2;
    static final int COMPRESSION_T4 = 3;
    static final int COMPRESSION_T6 = 4;
    /** Zlib streams, one a strip: TIFF Technical Note 2 (2002). */
    static final int COMPRESSION_DEFLATE = 8;
    /** The same under the number that it had before. */
    static final int COMPRESSION_DEFLATE_BEFORE = 32_946;

    private TiffTag() {
    }

    /** Bytes of one value of a type; 0 for types that neither TIFF 6.0 nor BigTIFF has. */
    static int bytesOf(int type) {
        return switch (type) {
            case BYTE, ASCII, 6, 7 -> 1;
            case SHORT, 8 -> 2;
            case LONG, 9, 11 -> 4;
            case RATIONAL, 10, 12, LONG8, 17, 18 -> 8;
            default -> 0;
        };
    }
}
