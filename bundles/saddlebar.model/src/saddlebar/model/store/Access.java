package saddlebar.model.store;

/** What a folder is opened for. */
public enum Access {
    /** Nothing is written and nothing is locked; any number of readers. */
    READ,
    /** The folder's lock is held until it is closed. A shared studio is locked only for the moment in which it is written. */
    WRITE,
    /** As {@link #WRITE}, and the studio's lock is held too; taken before the commission's. */
    WRITE_WITH_STUDIO;

    public boolean writes() {
        return this != READ;
    }
}
