package saddlebar.model.store;

import java.io.IOException;

/** The right to write in a folder, for as long as a hold on it is open. */
interface WriteGate {
    /** @throws saddlebar.model.problem.LockedException if somebody else holds the folder */
    Hold hold() throws IOException;

    /** Closed when the writing is done. */
    interface Hold extends AutoCloseable {
        /** An assertion for those who only need the hold to be open. */
        void requireHeld();

        @Override
        void close() throws IOException;
    }
}
