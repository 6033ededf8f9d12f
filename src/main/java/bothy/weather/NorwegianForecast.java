package bothy.weather;

import bothy.garden.Grower;
import bothy.garden.WeatherDay;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Forecasts of the Norwegian Meteorological Institute, Locationforecast 2.0, as its terms of service ask: the caller names itself, a
 * forecast is kept until the service says that it is stale and then asked for with the time of the last one, coordinates are rounded (to a
 * hundredth of a degree, about a kilometre, where four decimals are allowed), refusals are answered with silence. The data are
 * under CC BY 4.0 and the institute must be credited where they are shown.
 */
public final class NorwegianForecast implements WeatherSource {
    /** The service. */
    public static final URI SERVICE = URI.create("https://api.met.no/weatherapi/locationforecast/2.0/");

    private static final Logger LOG = LoggerFactory.getLogger(NorwegianForecast.class);
    private static final int MOST_PLACES = 2000;

    private final URI service;
    private final String userAgent;
    private final Duration patience;
    private final InstantSource clock;
    private final HttpClient client = HttpClient.newBuilder()
            .followRedirects(HttpClient.Redirect.NEVER)
            .connectTimeout(Duration.ofSeconds(5))
            .build();
    private final Pause pause = new Pause();
    private final Map<String, Place> places = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Place> eldest) {
            return size() > MOST_PLACES;
        }
    };

    /**
     * @param service address of the service, ending in a slash
     * @param userAgent name and contact of whoever runs the bot, as the terms ask ("school-plot-bot/1 garden@example.org")
     * @param patience the longest that a message waits for a forecast
     * @param clock for the age of what is kept
     * @throws IllegalArgumentException when the user agent names nobody
     */
    public NorwegianForecast(URI service, String userAgent, Duration patience, InstantSource clock) {
        if (userAgent == null || !userAgent.strip().matches(".*\\S+[@.]\\S+.*")) {
            throw new IllegalArgumentException("the forecast service asks for a name with an e-mail or web address; \""
                    + userAgent + "\" has none");
        }
        this.service = service;
        this.userAgent = userAgent.strip();
        this.patience = patience;
        this.clock = clock;
    }

    @Override
    public List<WeatherDay> around(Grower grower, LocalDate today) {
        return days(grower).stream().map(ForecastDay::whole).toList();
    }

    /** The same days with humidity and wind, in order; days past are those of earlier forecasts. Empty when no place is known. */
    public List<ForecastDay> days(Grower grower) {
        if (grower.latitude() == null || grower.longitude() == null) {
            return List.of();
        }
        Place place = place(grower);
        synchronized (place) {
            if (place.due(clock.instant()) && pause.over(clock.instant())) {
                fetch(place);
            }
            return place.days(grower.zone());
        }
    }

    @Override
    public Optional<String> trouble(Grower grower) {
        if (grower.latitude() == null || grower.longitude() == null) {
            return Optional.empty();
        }
        return pause.trouble();
    }

    @Override
    public Optional<String> credit() {
        return Optional.of("MET Norway, CC BY 4.0");
    }

    @Override
    public boolean slow() {
        return true;
    }

    private Place place(Grower grower) {
        String query = String.format(Locale.ROOT, "lat=%.2f&lon=%.2f", grower.latitude(), grower.longitude());
        synchronized (places) {
            return places.computeIfAbsent(query, Place::new);
        }
    }

    private void fetch(Place place) {
        try {
            take(place, send(place));
        } catch (IOException | TimeoutException unreachable) {
            LOG.warn("The forecast service could not be reached: {}", unreachable.toString());
            pause.failed(clock.instant(), "the forecast service cannot be reached just now");
        } catch (ForecastUnreadable unreadable) {
            LOG.warn("The forecast could not be read: {}", unreadable.getMessage());
            pause.failed(clock.instant(), "the forecast service sent something that could not be read");
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private HttpResponse<byte[]> send(Place place) throws IOException, TimeoutException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(service.resolve("complete?" + place.query()))
                .header("User-Agent", userAgent)
                .header("Accept", "application/json")
                .header("Accept-Encoding", "gzip")
                .timeout(patience);
        place.lastModified().ifPresent(time -> request.header("If-Modified-Since", time));
        CompletableFuture<HttpResponse<byte[]>> answer = client.sendAsync(request.build(), info -> new LimitedBody());
        try {
            // the request's own timeout ends with the headers; this one covers a body that trickles in
            return answer.get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (ExecutionException failed) {
            throw new IOException(failed.getCause());
        } finally {
            answer.cancel(true);
        }
    }

    private void take(Place place, HttpResponse<byte[]> response) throws IOException, ForecastUnreadable {
        Instant now = clock.instant();
        switch (response.statusCode()) {
            case 200, 203 -> {
                if (response.statusCode() == 203) {
                    LOG.warn("The forecast service says that this version of it is to be withdrawn.");
                }
                place.took(now, response.headers(), ForecastReading.read(LimitedBody.unpacked(response)));
                pause.well();
            }
            case 304 -> {
                place.unchanged(now, response.headers());
                pause.well();
            }
            case 403 -> {
                LOG.error("The forecast service refuses this caller; check the name given to it and its terms.");
                pause.refused(now, "the forecast service refuses to answer");
            }
            case 429 -> {
                LOG.warn("The forecast service asks for fewer calls.");
                pause.refused(now, "the forecast service is asked too often just now");
            }
            default -> {
                LOG.warn("The forecast service answered with status {}.", response.statusCode());
                pause.failed(now, "the forecast service is out of order just now");
            }
        }
    }
}
