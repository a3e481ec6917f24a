package saddlebar.production.make;

import saddlebar.model.work.Work;

/** Stops when asked and tells nothing: for steps whose units are not known before, or are none of those agreed on. */
record StopOnly(Work work) implements Work {
    @Override
    public void advance(long units) {
        work.checkpoint();
    }

    @Override
    public void checkpoint() {
        work.checkpoint();
    }

    @Override
    public void say(String what) {
        work.say(what);
    }
}
