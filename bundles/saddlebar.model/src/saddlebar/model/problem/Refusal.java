package saddlebar.model.problem;

import java.util.Objects;

import saddlebar.model.units.Require;

/**
 * Input that cannot be worked with, told so that the person can mend it: {@code where: what; what to do}. It rises to the one handler of a
 * command, a part or a job; nothing was written. The command line ends with exit code 3.
 */
public class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final String where;
    private final String what;
    private final String remedy;

    /**
     * @param where  file, {@code file:line}, element or object, with the file's name
     * @param what   what is wrong, without a full stop
     * @param remedy what to do about it, without a full stop
     */
    public Refusal(String where, String what, String remedy) {
        this(where, what, remedy, null);
    }

    public Refusal(String where, String what, String remedy, Throwable cause) {
        super(Objects.requireNonNull(where) + ": " + Require.text("what", what) + "; " + Require.text("remedy", remedy), cause);
        this.where = where;
        this.what = what;
        this.remedy = remedy;
    }

    public String where() {
        return where;
    }

    public String what() {
        return what;
    }

    public String remedy() {
        return remedy;
    }
}
