package bothy.channel.telegram;

import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import com.sun.net.httpserver.HttpServer;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.concurrent.Executors;

/** One of many workers on one database: takes in what it is sent and works until it is killed. Prints its port. */
final class WorkerProgram {
    static final String SECRET = "a-secret-of-the-school-plot_2027";

    private WorkerProgram() {}

    /** @param args the diary's address, the service's address */
    public static void main(String[] args) throws Exception {
        Store store = Shelf.open(args[0]);
        TelegramChannel channel = new TelegramChannel(
                Talk.settings(URI.create(args[1])), store, Talk.writing(store, message -> {}), Clock.systemUTC());
        channel.start(new TelegramSettings.Webhook(URI.create("https://bothy.example/telegram"), SECRET));
        HttpServer porch = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        porch.setExecutor(Executors.newFixedThreadPool(4));
        porch.createContext("/telegram", exchange -> {
            String update = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
            exchange.sendResponseHeaders(channel.delivered(update, SECRET), -1);
            exchange.close();
        });
        porch.start();
        System.out.println("port " + porch.getAddress().getPort());
    }
}
