package bothy.reading;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Doubt.About;
import bothy.garden.Heard;
import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One day, then all the ways to say it, on Wednesday 19 May 2027 (common usage; days of the week from the Gregorian calendar). */
class DaysToldTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "2027-05-19; today, just now, this morning, earlier today, this afternoon, tonight, at lunchtime",
                "2027-05-18; yesterday, last night, yesterday morning, yday, yesterday evening, on tuesday, on Tues",
                "2027-05-17; the day before yesterday, two days ago, on Monday, since Monday, monday this week, 2 days ago, on the 17th, 17 May, May 17th, 17/5, 17.5.27, 2027-05-17",
                "2027-05-16; on Sunday, last sunday, three days ago, Sunday just gone, 16th of May, on Sun",
                "2027-05-15; at the weekend, last weekend, over the weekend, on Saturday, four days ago, on the 15th, mid May, in the middle of May",
                "2027-05-12; a week ago, last Wednesday, one week ago, 12th May 2027, last week, seven days ago, Wednesday last week, 12/05/2027",
                "2027-05-05; a fortnight ago, two weeks ago, 2 weeks back, 5 May, early May, May 5, the 5th of May",
                "2027-05-01; start of May, beginning of May, at the start of may, 1st May, May 1, the first of May",
                "2027-04-28; three weeks ago, three weeks ago today, 28th April, Apr 28, 3 weeks ago",
                "2027-04-30; end of April, at the end of april, 30 april, 30/4/27",
                "2027-05-10; on the 10th, May 10th, after the last frost"
            })
    void a_day_is_the_same_however_it_is_said(LocalDate day, String sayings) {
        for (String saying : sayings.split(", ")) {
            Heard heard = Grown.heard("sowed 6 leeks " + saying, Grown.TODAY, false);

            assertThat(heard.statements()).as(saying).hasSize(1);
            assertThat(heard.statements().get(0).event().on()).as(saying).isEqualTo(day);
            assertThat(heard.statements().get(0).event().count()).as(saying).isEqualTo(6);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "3/4, false, 2027-04-03",
        "3/4, true, 2027-03-04",
        "13/4, true, 2027-04-13",
        "4/13, false, 2027-04-13",
        "1/12, false, 2026-12-01"
    })
    void figures_follow_the_growers_order_where_it_can_be(String figures, boolean monthFirst, LocalDate day) {
        Heard heard = Grown.heard("planted garlic " + figures, Grown.TODAY, monthFirst);

        assertThat(heard.statements().get(0).event().on()).isEqualTo(day);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "31 April",
                "30 Feb",
                "the 32nd of May",
                "the other day",
                "a while ago",
                "at easter",
                "on the bank holiday",
                "when we got back from hols",
                "tomorrow",
                "next Tuesday",
                "in March",
                "on 3 October 2027",
                "recently",
                "29 February 2027",
                "on 25 May 2027"
            })
    void a_day_that_cannot_be_or_that_only_the_grower_knows_is_asked(String saying) {
        Heard heard = Grown.heard("sowed leeks " + saying, Grown.TODAY, false);

        assertThat(heard.doubt()).as(saying).isNotNull();
        assertThat(heard.doubt().about()).isEqualTo(About.WHICH_DATE);
        assertThat(heard.statements()).noneMatch(statement -> statement.sure());
        assertThat(heard.doubt().draft()).isNotNull();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "will sow peas tomorrow; 2027-05-20",
                "going to plant out the leeks on Saturday; 2027-05-22",
                "sowing peas next Tuesday; 2027-05-25",
                "will sow kale in three weeks; 2027-06-09",
                "will sow kale three weeks today; 2027-06-09",
                "going to sow kale on the 1st of June; 2027-06-01",
                "need to sow kale a week on Friday; 2027-05-28"
            })
    void a_plan_lies_ahead(String saying, LocalDate day) {
        Heard heard = Grown.heard(saying, Grown.TODAY, false);

        assertThat(heard.statements()).isEmpty();
        assertThat(heard.plans()).as(saying).hasSize(1);
        assertThat(heard.plans().get(0).on()).as(saying).isEqualTo(day);
    }

    /** Easter Sunday by the tables of the Book of Common Prayer, 1662, as reprinted by the United States Naval Observatory; from memory. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "on good friday; 2027-05-19; 2027-03-26",
                "on easter monday; 2027-05-19; 2027-03-29",
                "on easter sunday; 2026-05-19; 2026-04-05",
                "on easter sunday; 2025-05-19; 2025-04-20",
                "on good friday; 2024-05-19; 2024-03-29",
                "on st patrick's day; 2027-05-19; 2027-03-17",
                "on boxing day; 2027-01-20; 2026-12-26",
                "on halloween; 2027-11-02; 2027-10-31"
            })
    void a_feast_is_the_last_one_there_was(String saying, LocalDate today, LocalDate day) {
        Heard heard = Grown.heard("sowed leeks " + saying, today, false);

        assertThat(heard.doubt()).as(saying).isNull();
        assertThat(heard.statements().get(0).event().on()).as(saying).isEqualTo(day);
    }

    /** 4 January is always in week 1 (ISO 8601). */
    @ParameterizedTest
    @CsvSource({"week 20, 2027-05-17", "week 1, 2027-01-04", "week 18, 2027-05-03"})
    void a_week_of_the_year_begins_on_its_monday(String saying, LocalDate monday) {
        Heard heard = Grown.heard("sowed leeks " + saying, Grown.TODAY, false);

        assertThat(heard.statements().get(0).event().on()).isEqualTo(monday);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "6 cells of leeks sown",
                "sowed leeks in row 3 bed 2",
                "sowed leeks in half litre pots",
                "sowed spring onions",
                "sowed summer squash",
                "sowed winter lettuce",
                "sowed one hour ago 6 leeks",
                "sowed leeks and sat on the bench",
                "sowed leeks at 7am",
                "sowed leeks, 10 in a row"
            })
    void words_that_look_like_days_are_none(String saying) {
        Heard heard = Grown.heard(saying, Grown.TODAY, false);

        assertThat(heard.statements()).as(saying).isNotEmpty();
        assertThat(heard.statements().get(0).event().on()).as(saying).isEqualTo(Grown.TODAY);
        assertThat(heard.doubt()).as(saying).isNull();
    }
}
