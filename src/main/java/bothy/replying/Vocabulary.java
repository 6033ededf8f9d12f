package bothy.replying;

import bothy.almanac.Sheet;
import bothy.almanac.Wording;
import bothy.garden.Garden;
import bothy.garden.Given;
import bothy.garden.SowWindow;
import bothy.garden.Stage;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the words for a name in a sentence: the advice's own figures first, then the planting, then the sheet. */
final class Vocabulary {
    private static final Map<String, String> OF_MANY = agreement("", "are", "have", "do", "they", "them", "their");
    private static final Map<String, String> OF_A_MASS = agreement("s", "is", "has", "does", "it", "it", "its");
    private final Wording wording;
    private final Map<String, Sheet> sheets;
    private final Garden garden;
    private final Names names;
    private final Quantities quantities;

    Vocabulary(Wording wording, Map<String, Sheet> sheets, Garden garden, LocalDate today) {
        this.wording = wording;
        this.sheets = sheets;
        this.garden = garden;
        this.names = new Names(wording, garden);
        this.quantities = new Quantities(garden.grower().units(), today);
    }

    private static Map<String, String> agreement(
            String ending, String are, String have, String does, String they, String them, String their) {
        return Map.of(
                "s",
                ending,
                "are",
                are,
                "have",
                have,
                "do",
                does,
                "they",
                they,
                "They",
                Phrasing.upper(they),
                "them",
                them,
                "their",
                their);
    }

    Names names() {
        return names;
    }

    /** Whether a crop begun so is planted, not sown: cloves, tubers, and sets that did not come up in a pot. */
    boolean planted(String crop, String container) {
        Sheet sheet = crop == null ? null : sheets.get(crop);
        Sheet.Start start = sheet == null || sheet.growth() == null
                ? Sheet.Start.SEED
                : sheet.growth().start();
        return start != Sheet.Start.SEED
                && !((start == Sheet.Start.SET || start == Sheet.Start.PLANT) && container != null);
    }

    /** Whether a planting is in the garden, not only asked about. */
    boolean begun(String planting) {
        return garden.planting(planting).isPresent();
    }

    /** As {@link #planted(String, String)}, of a planting. */
    boolean planted(String planting) {
        return garden.planting(planting)
                .map(one -> planted(one.crop(), one.container()))
                .orElse(false);
    }

    /** Everyday words of a stage of a planting. */
    String stage(Stage stage, String planting) {
        String own = stage == Stage.SOWN && planted(planting) ? wording.stages().get("set") : null;
        return own == null ? wording.stages().getOrDefault(stage.word(), stage.word()) : own;
    }

    Quantities quantities() {
        return quantities;
    }

    /** The word that agrees with the crop: "garlic wants it", "onions want them"; {@code several} crops together are many. */
    Optional<String> agreeing(Given given, String name, boolean several) {
        boolean mass = !several && given.crop() != null && names.mass(given.crop());
        return Optional.ofNullable((mass ? OF_A_MASS : OF_MANY).get(name));
    }

    Optional<String> word(Given given, String name) {
        return agreeing(given, name, false).or(() -> figureOrName(given, name));
    }

    private Optional<String> figureOrName(Given given, String name) {
        Object figure = name.startsWith("crop") ? null : given.figures().get(name);
        if (figure != null) {
            return Optional.of(write(name, figure));
        }
        return switch (name) {
            case "nextCheck" -> Optional.of(quantities.day(given.nextCheck()));
            case "due" -> Optional.of(quantities.nearDay(given.due()));
            case "crops" -> Optional.ofNullable(given.planting()).map(names::planting);
            case "planting" -> Optional.ofNullable(given.planting()).map(names::planting);
            case "crop" -> Optional.ofNullable(given.crop()).map(names::one);
            case "counted" -> Optional.ofNullable(given.planting()).map(planting -> counted(given, planting));
            default -> ofPlanting(given, name).or(() -> ofSheet(given.crop(), name));
        };
    }

    /** "3 onions", "1 tomato"; the crop alone where no count is told. */
    private String counted(Given given, String planting) {
        Object count = given.figures().get("count");
        if (count == null) {
            return names.planting(planting);
        }
        boolean one = count instanceof Number number && number.intValue() == 1 && given.crop() != null;
        return write("count", count) + " " + (one ? names.one(given.crop()) : names.planting(planting));
    }

    private Optional<String> ofPlanting(Given given, String name) {
        return Optional.ofNullable(given.planting())
                .flatMap(garden::planting)
                .flatMap(planting -> component(planting, name))
                .map(value -> write(name, value));
    }

    /** A figure of the crop's sheet by the name of its leaf. */
    private Optional<String> ofSheet(String crop, String name) {
        Sheet sheet = crop == null ? null : sheets.get(crop);
        if (sheet == null) {
            return Optional.empty();
        }
        for (RecordComponent group : Sheet.class.getRecordComponents()) {
            Object value = read(group, sheet);
            if (value instanceof Record record) {
                Optional<Object> leaf = component(record, name);
                if (leaf.isPresent()) {
                    return Optional.of(write(name, leaf.get()));
                }
            }
        }
        return Optional.empty();
    }

    /** The sheet's figures that an advice used. */
    List<SheetFigures.Figure> sheetFigures(Given given) {
        Sheet sheet = given.crop() == null ? null : sheets.get(given.crop());
        return sheet == null ? List.of() : SheetFigures.of(given, sheet);
    }

    String write(String name, Object value) {
        if (value instanceof List<?> list) {
            return Names.list(list.stream().map(one -> write(name, one)).toList());
        }
        if (value instanceof SowWindow window) {
            String until = quantities.dayOfYear(window.until());
            return names.many(window.crop()) + " ("
                    + (window.from() == null ? "until " : quantities.dayOfYear(window.from()) + " to ") + until + ")";
        }
        if (value instanceof String sign && name.equals("sign")) {
            return sign.replace('-', ' ');
        }
        if (value instanceof String id) {
            return wording.phrases().getOrDefault(id, id);
        }
        return quantities.write(name, value);
    }

    private static Optional<Object> component(Record record, String name) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            if (component.getName().equals(name)) {
                return Optional.ofNullable(read(component, record));
            }
        }
        return Optional.empty();
    }

    private static Object read(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }
}
