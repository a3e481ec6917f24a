package saddlebar.model.problem;

import java.io.IOException;

/** Another program or person holds the commission or studio, or the target cannot be written. Nothing was changed; exit code 4. */
public class LockedException extends IOException {
    private static final long serialVersionUID = 1;

    public LockedException(String message) {
        super(message);
    }

    public LockedException(String message, Throwable cause) {
        super(message, cause);
    }
}
