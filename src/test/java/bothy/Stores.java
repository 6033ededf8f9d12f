package bothy;

import bothy.diary.Store;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;

/** Stores that do one thing only; all else that is asked of them fails the test. */
final class Stores {
    private Stores() {}

    interface Asked {
        Object of(String method, Object[] arguments);
    }

    static Store that(Asked asked) {
        InvocationHandler handler = (proxy, method, arguments) -> asked.of(method.getName(), arguments);
        return (Store) Proxy.newProxyInstance(Stores.class.getClassLoader(), new Class<?>[] {Store.class}, handler);
    }

    /** Nothing waits in it. */
    static Store empty() {
        return that((method, arguments) -> {
            if (method.equals("waiting")) {
                return new Store.Waiting(0, 0, 0, 0);
            }
            throw new AssertionError(method);
        });
    }
}
