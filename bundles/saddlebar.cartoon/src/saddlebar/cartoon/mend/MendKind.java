package saddlebar.cartoon.mend;

import saddlebar.cartoon.CutlineProblems;

/** What a mend does, and which problem of the cutline it answers. */
public enum MendKind {
    /** Two free ends that lie close together are moved to the middle between them. */
    SNAP_ENDS("snap-ends", CutlineProblems.OPEN_END),
    /** A straight step across a small gap from one free end to another that it looks at. */
    JOIN_GAP("join-gap", CutlineProblems.OPEN_END),
    /** A free end is carried on to the line ahead of it. */
    EXTEND_END("extend-end", CutlineProblems.OPEN_END),
    /** An end that runs past a crossing is cut back to it. */
    TRIM_END("trim-end", CutlineProblems.CROSSING_END),
    /** A line, or a stretch of it, that lies on a longer line is taken out. */
    REMOVE_DOUBLED("remove-doubled", CutlineProblems.DOUBLED_LINE);

    private final String key;
    private final String problemCode;

    MendKind(String key, String problemCode) {
        this.key = key;
        this.problemCode = problemCode;
    }

    /** The word used in keys and records, never changed. */
    public String key() {
        return key;
    }

    /** Code of the problem that this kind answers. */
    public String problemCode() {
        return problemCode;
    }
}
