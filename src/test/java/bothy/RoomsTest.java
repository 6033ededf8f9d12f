package bothy;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Which room may import which: the house as it is meant. */
@AnalyzeClasses(packages = "bothy", importOptions = ImportOption.DoNotIncludeTests.class)
class RoomsTest {
    @ArchTest
    static final ArchRule each_room_is_used_only_by_the_rooms_above_it = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("garden")
            .definedBy("bothy.garden..")
            .layer("agronomy")
            .definedBy("bothy.agronomy..")
            .layer("weather")
            .definedBy("bothy.weather..")
            .layer("almanac")
            .definedBy("bothy.almanac..")
            .layer("diary")
            .definedBy("bothy.diary")
            .layer("diary.sql")
            .definedBy("bothy.diary.sql..")
            .layer("reading")
            .definedBy("bothy.reading..")
            .layer("advice")
            .definedBy("bothy.advice..")
            .layer("replying")
            .definedBy("bothy.replying..")
            .layer("conversation")
            .definedBy("bothy.conversation..")
            .layer("terminal")
            .definedBy("bothy.channel.terminal..")
            .layer("telegram")
            .definedBy("bothy.channel.telegram..")
            .layer("root")
            .definedBy("bothy")
            .whereLayer("root")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("terminal")
            .mayOnlyBeAccessedByLayers("root")
            .whereLayer("telegram")
            .mayOnlyBeAccessedByLayers("root")
            .whereLayer("conversation")
            .mayOnlyBeAccessedByLayers("root", "terminal", "telegram")
            .whereLayer("diary.sql")
            .mayOnlyBeAccessedByLayers("root")
            .whereLayer("diary")
            .mayOnlyBeAccessedByLayers("root", "diary.sql", "conversation")
            .whereLayer("reading")
            .mayOnlyBeAccessedByLayers("root", "conversation")
            .whereLayer("advice")
            .mayOnlyBeAccessedByLayers("root", "conversation")
            .whereLayer("replying")
            .mayOnlyBeAccessedByLayers("root", "conversation")
            .whereLayer("agronomy")
            .mayOnlyBeAccessedByLayers("root", "advice", "conversation")
            .whereLayer("weather")
            .mayOnlyBeAccessedByLayers("root", "advice", "conversation")
            .whereLayer("almanac")
            .mayOnlyBeAccessedByLayers("root", "reading", "advice", "replying", "conversation");

    @ArchTest
    static final ArchRule no_room_is_in_a_circle =
            slices().matching("bothy.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule only_advice_sees_the_rule_engine = noClasses()
            .that()
            .resideOutsideOfPackage("bothy.advice..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.drools..", "org.kie.."));

    @ArchTest
    static final ArchRule only_the_store_sees_databases = noClasses()
            .that()
            .resideOutsideOfPackage("bothy.diary.sql..")
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                    "java.sql..", "javax.sql..", "org.flywaydb..", "org.sqlite..", "org.postgresql..", "com.zaxxer.."));

    @ArchTest
    static final ArchRule only_the_telegram_channel_sees_telegram = noClasses()
            .that()
            .resideOutsideOfPackage("bothy.channel.telegram..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.telegram..", "okhttp3.."));

    @ArchTest
    static final ArchRule only_the_root_reads_the_clock_and_the_zone = noClasses()
            .that()
            .resideOutsideOfPackage("bothy")
            .should()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .callMethod(java.time.LocalDateTime.class, "now")
            .orShould()
            .callMethod(java.time.ZonedDateTime.class, "now")
            .orShould()
            .callMethod(java.time.ZoneId.class, "systemDefault")
            .orShould()
            .callMethod(java.time.Clock.class, "systemUTC")
            .orShould()
            .callMethod(java.time.Clock.class, "systemDefaultZone")
            .orShould()
            .callMethod(java.time.InstantSource.class, "system")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "getenv", String.class);

    @ArchTest
    static final ArchRule no_room_is_a_drawer =
            noClasses().should().resideInAnyPackage("..util..", "..common..", "..core..", "..manager..", "..impl..");
}
