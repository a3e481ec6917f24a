package saddlebar.ui.make;

import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.IProgressMonitor;

import saddlebar.model.work.Work;

/** Lets the workbench's progress view watch and stop work. Several threads may tell at once; the monitor hears one at a time. */
public final class MonitorWork implements Work {
    private final IProgressMonitor monitor;

    public MonitorWork(IProgressMonitor monitor) {
        this.monitor = monitor;
    }

    @Override
    public synchronized void advance(long units) {
        for (long left = units; left > 0; left -= Integer.MAX_VALUE) {
            monitor.worked((int) Math.min(left, Integer.MAX_VALUE));
        }
    }

    @Override
    public void checkpoint() {
        if (monitor.isCanceled()) {
            throw new CancellationException("stopped");
        }
    }

    @Override
    public synchronized void say(String what) {
        monitor.subTask(what);
    }
}
