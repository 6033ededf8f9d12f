package bothy.advice.clinic;

import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Garden;
import bothy.garden.Logged;
import bothy.garden.Planting;
import bothy.garden.SignSeen;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Derives the cases out of the diary, so that a case survives whatever happens to a conversation. */
final class Cases {
    /** Another sign told within so many days belongs to the same trouble; later it is a trouble of its own. Common practice. */
    private static final int TOGETHER_DAYS = 1;
    /** The same sign told again within so many days is the same trouble. Common practice. */
    private static final int AGAIN_DAYS = 21;
    /** A case that nobody spoke of for so long is laid aside. */
    private static final int OPEN_DAYS = 35;

    private final Garden garden;
    private final Map<String, CaseFile> files = new LinkedHashMap<>();
    /** The message that told the last sign of each case. */
    private final Map<String, String> toldIn = new HashMap<>();

    private Cases(Garden garden) {
        this.garden = garden;
    }

    /** The newest case of each subject that is open today, or that today's entries closed. */
    static List<CaseFile> of(Garden garden, LocalDate today) {
        Cases cases = new Cases(garden);
        garden.standing().forEach(cases::take);
        return cases.files.values().stream()
                .filter(file -> ChronoUnit.DAYS.between(file.latest(), today) <= OPEN_DAYS)
                .filter(file -> !file.closed() || file.latest().equals(today))
                .filter(file -> file.latest().equals(today) || !cases.cleared(file))
                .toList();
    }

    private boolean cleared(CaseFile file) {
        return file.planting() != null
                && garden.planting(file.planting()).map(Planting::over).orElse(false);
    }

    private void take(Logged line) {
        Entry entry = line.entry();
        if (entry instanceof Event event && !files.isEmpty()) {
            up(event);
            died(event, line);
        }
        if (entry instanceof SignSeen sign) {
            SignSeen placed = placed(sign);
            LocalDate on = day(sign.on(), line);
            files.merge(
                    id(placed.planting(), placed.crop()),
                    CaseFile.opened(placed, on),
                    (old, fresh) -> old.closed()
                                    || ChronoUnit.DAYS.between(old.latest(), on) > TOGETHER_DAYS
                                    || elsewhere(old, placed, line)
                            ? fresh
                            : old.with(placed, on));
            toldIn.put(id(placed.planting(), placed.crop()), line.message());
        } else if (entry instanceof Finding finding) {
            LocalDate on = day(finding.on(), line);
            files.computeIfPresent(
                    id(plantingOf(finding.planting(), finding.crop()), finding.crop()),
                    (id, file) ->
                            ChronoUnit.DAYS.between(file.latest(), on) > OPEN_DAYS ? file : file.with(finding, on));
        }
    }

    /** Rotten fruit told in the morning and curled leaves told by themselves later are two troubles. */
    private boolean elsewhere(CaseFile file, SignSeen sign, Logged line) {
        return !line.message().equals(toldIn.get(file.id()))
                && file.signs().stream().allMatch(told -> PlantPart.of(told).apartFrom(PlantPart.of(sign.sign())));
    }

    /** What has come up no longer fails to come up. */
    private void up(Event event) {
        CaseFile file = files.get(id(event.planting(), event.crop()));
        boolean shown =
                event.what() == What.EMERGED || event.what() == What.PRICKED_OUT || event.what() == What.PLANTED_OUT;
        if (file != null && shown && List.of("no-emergence").containsAll(file.signs())) {
            files.remove(file.id());
        }
    }

    /** Plants that died are an outcome of their trouble, if it was spoken of lately. */
    private void died(Event event, Logged line) {
        if (event.what() == What.DIED && event.planting() != null) {
            LocalDate on = day(event.on(), line);
            files.computeIfPresent(
                    event.planting(),
                    (id, file) -> file.closed() || ChronoUnit.DAYS.between(file.latest(), on) > OPEN_DAYS
                            ? file
                            : file.with(
                                    new Finding(file.planting(), file.crop(), Finding.OUTCOME, "died", false, on), on));
        }
    }

    /** A case lives by the days on which it is spoken of, however long ago a sign was seen. */
    private static LocalDate day(LocalDate told, Logged line) {
        LocalDate spoken = line.at().atZone(java.time.ZoneOffset.UTC).toLocalDate();
        return told == null || told.isBefore(spoken) ? spoken : told;
    }

    static String id(String planting, String crop) {
        return planting != null ? planting : crop != null ? crop : "plot";
    }

    /** A sign of nothing named belongs to what is being talked about: the one case of these days. */
    private SignSeen placed(SignSeen sign) {
        List<CaseFile> lately = sign.planting() != null || sign.crop() != null || sign.on() == null
                ? List.of()
                : files.values().stream()
                        .filter(file ->
                                !file.closed() && ChronoUnit.DAYS.between(file.latest(), sign.on()) <= TOGETHER_DAYS)
                        .toList();
        return lately.size() == 1
                ? new SignSeen(
                        sign.sign(),
                        lately.get(0).planting(),
                        lately.get(0).crop(),
                        sign.on(),
                        sign.where(),
                        sign.count(),
                        sign.seedAge())
                : ofPlanting(sign);
    }

    private SignSeen ofPlanting(SignSeen sign) {
        String planting = plantingOf(sign.planting(), sign.crop());
        String crop = planting == null
                ? sign.crop()
                : garden.planting(planting).map(Planting::crop).orElse(sign.crop());
        return new SignSeen(sign.sign(), planting, crop, sign.on(), sign.where(), sign.count(), sign.seedAge());
    }

    /** A crop of which one planting grows means that planting. */
    private String plantingOf(String planting, String crop) {
        if (planting != null || crop == null) {
            return planting;
        }
        List<Planting> ofCrop =
                garden.growing().stream().filter(one -> one.crop().equals(crop)).toList();
        return ofCrop.size() == 1 ? ofCrop.get(0).id() : null;
    }
}
