package bothy.conversation;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Logged;
import bothy.garden.SettingChange;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReminderTest {
    private static final LocalTime MORNING = LocalTime.of(8, 0);
    private static final LocalDateTime TOLD = LocalDateTime.of(2027, 5, 3, 19, 0);

    private static Reminder on(LocalDate day) {
        return new Reminder(1, TOLD, day, null, null, "water the lettuce");
    }

    @Test
    void a_reminder_without_an_hour_is_due_in_the_morning() {
        Reminder friday = on(LocalDate.of(2027, 5, 7));

        assertThat(friday.nextDue(TOLD, MORNING)).contains(LocalDateTime.of(2027, 5, 7, 8, 0));
        assertThat(friday.lastDue(LocalDateTime.of(2027, 5, 7, 7, 59), MORNING)).isEmpty();
        assertThat(friday.lastDue(LocalDateTime.of(2027, 5, 9, 12, 0), MORNING))
                .as("made up for after a standstill")
                .contains(LocalDateTime.of(2027, 5, 7, 8, 0));
        assertThat(friday.nextDue(LocalDateTime.of(2027, 5, 7, 8, 0), MORNING)).isEmpty();
    }

    @Test
    void one_that_recurs_is_due_at_its_hour_every_so_many_days() {
        Reminder often = on(LocalDate.of(2027, 5, 4)).at(LocalTime.of(18, 0)).every(2);

        assertThat(often.nextDue(TOLD, MORNING)).contains(LocalDateTime.of(2027, 5, 4, 18, 0));
        assertThat(often.nextDue(LocalDateTime.of(2027, 5, 4, 18, 0), MORNING))
                .contains(LocalDateTime.of(2027, 5, 6, 18, 0));
        assertThat(often.lastDue(LocalDateTime.of(2027, 5, 6, 17, 59), MORNING))
                .contains(LocalDateTime.of(2027, 5, 4, 18, 0));
        assertThat(often.lastDue(LocalDateTime.of(2027, 5, 6, 18, 0), MORNING))
                .contains(LocalDateTime.of(2027, 5, 6, 18, 0));
    }

    /** So whoever looks at what comes next misses none, and gives none before its time. */
    @Test
    void what_comes_next_is_the_last_once_its_moment_is_there() {
        Random random = new Random(20270503);
        for (int i = 0; i < 5_000; i++) {
            Reminder one = on(TOLD.toLocalDate().plusDays(1 + random.nextInt(20)));
            one = random.nextBoolean() ? one.every(1 + random.nextInt(30)) : one;
            one = random.nextBoolean() ? one.at(LocalTime.of(random.nextInt(24), random.nextInt(60))) : one;
            LocalDateTime now = TOLD.plusMinutes(random.nextInt(60 * 24 * 60));

            LocalDateTime next = one.nextDue(now, MORNING).orElse(null);

            if (next != null) {
                assertThat(next).isAfter(now);
                assertThat(one.lastDue(next, MORNING)).contains(next);
                assertThat(one.lastDue(next.minusSeconds(1), MORNING)).isNotEqualTo(java.util.Optional.of(next));
            } else {
                assertThat(one.recurs()).isFalse();
                assertThat(one.lastDue(now, MORNING)).isPresent();
            }
        }
    }

    @Test
    void hour_interval_and_words_belong_to_the_day_before_them() {
        assertThat(told("remindOn=2027-05-04", "remindOn=2027-05-08", "remindAt=18:00", "remindOf=feed"))
                .extracting(Reminder::on, Reminder::at, Reminder::of)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(LocalDate.of(2027, 5, 4), null, null),
                        org.assertj.core.groups.Tuple.tuple(LocalDate.of(2027, 5, 8), LocalTime.of(18, 0), "feed"));
    }

    @Test
    void what_is_called_off_is_what_shares_a_word_and_else_what_recurs() {
        String[] two = {
            "remindOn=2027-05-04", "remindOf=water the lettuce", "remindOn=2027-05-08", "remindOf=feed the toms"
        };

        assertThat(told(two[0], two[1], two[2], two[3], "remindNoMore=watering"))
                .extracting(Reminder::of)
                .containsExactly("feed the toms");
        assertThat(told(two[0], two[1], two[2], two[3], "remindNoMore=")).isEmpty();
        assertThat(told(two[0], two[1], two[2], "remindEvery=7", two[3], "remindNoMore=hoeing"))
                .as("where none shares a word, those that come again and again")
                .extracting(Reminder::of)
                .containsExactly("water the lettuce");
    }

    @Test
    void who_wants_no_messages_still_gets_what_was_asked_for_once() {
        assertThat(told(
                        "remindOn=2027-05-04",
                        "remindOf=feed",
                        "remindOn=2027-05-08",
                        "remindEvery=7",
                        "reminders=none"))
                .extracting(Reminder::of)
                .containsExactly("feed");
    }

    @Test
    void a_day_or_an_interval_that_cannot_be_stops_nobody() {
        assertThat(told("remindAt=18:00", "remindOn=soon", "remindOn=2027-05-04", "remindEvery=0", "remindAt=25:00"))
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.recurs()).isFalse();
                    assertThat(one.at()).isNull();
                });
    }

    private static List<Reminder> told(String... settings) {
        RemindersTold told = new RemindersTold(ZoneOffset.UTC);
        long number = 0;
        for (String setting : settings) {
            SettingChange change = new SettingChange(setting.split("=", 2)[0], setting.split("=", 2)[1]);
            told.take(new Logged(++number, "m", Instant.EPOCH, change), change);
        }
        return told.all();
    }
}
