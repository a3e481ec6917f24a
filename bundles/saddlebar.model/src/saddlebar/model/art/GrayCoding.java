package saddlebar.model.art;

/** What the bytes of a gray band mean. 0 is black and 255 is white paper in both. */
public enum GrayCoding {
    /** 0.2126 R + 0.7152 G + 0.0722 B of the code values as they stand in the artwork; darkness is 1 - value/255. */
    CODE_VALUES,
    /**
     * The luminance 0.2126 R + 0.7152 G + 0.0722 B of linear light, coded with the sRGB curve (IEC 61966-2-1) so that eight bits keep the
     * dark steps; decode before use: darkness is 1 - linear(value/255).
     */
    SRGB_LUMINANCE
}
