package saddlebar.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;

/** The launcher as an Equinox application; what it returns is the exit status of the process. */
public final class Main implements IApplication {
    /** Well below the second that a user waits after Ctrl-C. */
    private static final long END_WITHIN_MS = 900;

    @Override
    public Object start(IApplicationContext context) throws InvalidSyntaxException {
        context.applicationRunning();
        String[] words = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        BundleContext bundles = FrameworkUtil.getBundle(Main.class).getBundleContext();
        List<BenchCommand> commands = new ArrayList<>();
        Collection<ServiceReference<BenchCommand>> found = bundles.getServiceReferences(BenchCommand.class, null);
        for (ServiceReference<BenchCommand> one : found) {
            commands.add(bundles.getServiceObjects(one).getService());
        }
        StopSign stop = new StopSign();
        Thread onEnd = new Thread(() -> {
            stop.raise();
            try {
                stop.awaitEnd(END_WITHIN_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }, "stop");
        Runtime.getRuntime().addShutdownHook(onEnd);
        try {
            Launcher launcher = new Launcher(commands, FrameworkUtil.getBundle(Main.class).getVersion().toString(),
                    new Voice(System.out, System.err), stop);
            return launcher.run(words);
        } finally {
            stop.workEnded();
            if (!stop.isRaised()) {
                Runtime.getRuntime().removeShutdownHook(onEnd);
            }
        }
    }

    @Override
    public void stop() {
        // the shutdown hook stops the work
    }
}
