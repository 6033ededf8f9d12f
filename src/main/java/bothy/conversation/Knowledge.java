package bothy.conversation;

import bothy.advice.Advisor;
import bothy.almanac.Sheet;
import bothy.reading.Reading;
import bothy.replying.Replier;
import bothy.weather.WeatherSource;
import java.util.Map;

/** All that a conversation needs besides the diary; made once from a rules folder. */
public record Knowledge(
        Reading reading, Advisor advisor, Replier replier, Map<String, Sheet> sheets, WeatherSource weather) {}
