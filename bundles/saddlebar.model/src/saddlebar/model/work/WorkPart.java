package saddlebar.model.work;

/** A step's own units, scaled to the share of its parent without losing a unit to rounding. */
final class WorkPart implements Work {
    private final Work whole;
    private final long share;
    private final long units;
    private long done;
    private long told;

    WorkPart(Work whole, long share, long units) {
        if (share < 0 || units < 1) {
            throw new IllegalArgumentException("a part of work needs share >= 0 and units >= 1 but has " + share + " and " + units);
        }
        this.whole = whole;
        this.share = share;
        this.units = units;
    }

    @Override
    public void advance(long more) {
        long step;
        synchronized (this) {
            done = Math.min(units, done + more);
            long due = Math.round((double) share * done / units);
            step = due - told;
            told = due;
        }
        if (step > 0) {
            whole.advance(step);
        }
    }

    @Override
    public void checkpoint() {
        whole.checkpoint();
    }

    @Override
    public void say(String what) {
        whole.say(what);
    }
}
