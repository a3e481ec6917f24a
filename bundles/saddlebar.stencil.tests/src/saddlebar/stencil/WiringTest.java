package saddlebar.stencil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.ServiceRegistration;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.process.StencilProcess;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.stencil.tone.ToneTable;

/** The collectors in a running OSGi: they see what this bundle offers, and a newcomer's method without any list being edited. */
class WiringTest {
    private static final List<String> OWN_METHODS = ScreeningMethods.ownMethods().keys();

    private final BundleContext context = FrameworkUtil.getBundle(ScreeningMethods.class).getBundleContext();

    @Test
    void allMethodsAreCollected() {
        ScreeningMethods methods = service(ScreeningMethods.class);
        assertEquals(OWN_METHODS, methods.keys());
        for (String key : OWN_METHODS) {
            assertEquals(key, methods.method(key).key());
        }
        assertEquals(OWN_METHODS.size(), offered(ScreeningMethod.class));
    }

    @Test
    void allProcessesAreCollected() {
        StencilProcesses processes = service(StencilProcesses.class);
        assertEquals(StencilProcesses.ownProcesses().keys(), processes.keys());
        assertEquals(processes.keys().size(), offered(StencilProcess.class));
    }

    @Test
    void aNewcomerComesAndGoes() throws InterruptedException {
        ServiceRegistration<ScreeningMethod> registration = context.registerService(ScreeningMethod.class, new Newcomer(), null);
        try {
            awaitKeys(OWN_METHODS.size() + 1);
            assertEquals("newcomer", service(ScreeningMethods.class).method("newcomer").key());
        } finally {
            registration.unregister();
        }
        awaitKeys(OWN_METHODS.size());
        assertThrows(Refusal.class, () -> service(ScreeningMethods.class).method("newcomer"));
    }

    /** A new collector takes the place of the old one, which may take a moment. */
    private void awaitKeys(int wanted) throws InterruptedException {
        int keys = -1;
        for (int tries = 0; tries < 200 && keys != wanted; tries++) {
            ServiceReference<ScreeningMethods> reference = context.getServiceReference(ScreeningMethods.class);
            keys = reference == null ? -1 : context.getService(reference).keys().size();
            if (keys != wanted) {
                Thread.sleep(10);
            }
        }
        assertEquals(wanted, keys);
    }

    private <T> T service(Class<T> type) {
        ServiceReference<T> reference = context.getServiceReference(type);
        assertNotNull(reference, "no service " + type.getSimpleName());
        return context.getService(reference);
    }

    private int offered(Class<?> type) {
        try {
            return context.getServiceReferences(type, null).size();
        } catch (org.osgi.framework.InvalidSyntaxException e) {
            throw new AssertionError(e);
        }
    }

    private static final class Newcomer implements ScreeningMethod {
        @Override
        public String key() {
            return "newcomer";
        }

        @Override
        public ActualScreen actual(ScreeningRecipe recipe) {
            return service().actual(recipe);
        }

        @Override
        public Screener start(ScreeningRecipe recipe, ToneTable tone, int widthPx, int heightPx) {
            return service().start(recipe, tone, widthPx, heightPx);
        }

        private static ScreeningMethod service() {
            return ScreeningMethods.ownMethods().method("solid");
        }
    }
}
