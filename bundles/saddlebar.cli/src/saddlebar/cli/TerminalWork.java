package saddlebar.cli;

import java.util.Locale;

import saddlebar.model.work.Work;

/** Progress on standard error: one moving line on a terminal, a line each tenth in a log, or nothing. */
final class TerminalWork implements Work {
    private static final int BAR = 30;

    private final Voice voice;
    private final boolean bar;
    private final boolean silent;
    private final long units;
    private final StopSign stop;
    private long done;
    private int toldTenths;
    private int toldSteps = -1;
    private String what = "";

    private TerminalWork(Voice voice, boolean bar, boolean silent, long units, StopSign stop) {
        this.voice = voice;
        this.bar = bar;
        this.silent = silent;
        this.units = Math.max(1, units);
        this.stop = stop;
    }

    static Work start(Voice voice, CommonOptions.Progress how, long units, StopSign stop) {
        boolean bar = how == CommonOptions.Progress.AUTO && System.console() != null;
        return new TerminalWork(voice, bar, how == CommonOptions.Progress.NONE, units, stop);
    }

    @Override
    public synchronized void advance(long more) {
        done = Math.min(units, done + more);
        if (silent) {
            return;
        }
        if (bar) {
            drawBar();
        } else {
            int tenths = (int) (10 * done / units);
            if (tenths > toldTenths) {
                toldTenths = tenths;
                voice.tell(String.format(Locale.ROOT, "%3d %%%s", 10 * tenths, what.isEmpty() ? "" : " " + what));
            }
        }
    }

    private void drawBar() {
        int steps = (int) (100 * done / units);
        if (steps != toldSteps) {
            toldSteps = steps;
            int full = (int) (BAR * done / units);
            String line = "\r[" + "=".repeat(full) + " ".repeat(BAR - full) + "] " + steps + " % " + what;
            String whole = line.length() > 100 ? line.substring(0, 100) : line + " ".repeat(100 - line.length());
            voice.draw(done == units ? whole + System.lineSeparator() : whole);
        }
    }

    @Override
    public void checkpoint() {
        stop.check();
    }

    @Override
    public synchronized void say(String now) {
        what = now;
    }
}
