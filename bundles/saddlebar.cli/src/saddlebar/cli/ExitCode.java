package saddlebar.cli;

/** What the launcher's exit status says; part of the contract with scripts, never changed. */
final class ExitCode {
    static final int WRONG_WORDS = 2;
    static final int INPUT_REFUSED = 3;
    static final int CANNOT_WRITE = 4;
    static final int OUR_FAULT = 5;
    static final int STOPPED = 130;

    private ExitCode() {
    }
}
