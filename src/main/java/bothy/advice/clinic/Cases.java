package bothy.advice.clinic;

import bothy.almanac.troubles.Troubles;
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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Derives the cases out of the diary, so that a case survives whatever happens to a conversation. */
final class Cases {
    /** Another sign told within so many days belongs to the same trouble; later it is a trouble of its own. Common practice. */
    private static final int TOGETHER_DAYS = 1;
    /** A case that nobody spoke of for so long is laid aside. */
    private static final int OPEN_DAYS = 35;

    /** Stands between what a case is of and the sign that sets it apart from another of the same planting. */
    static final char ASIDE = '/';

    private final Garden garden;
    private final Parting parting;
    private final Map<String, CaseFile> files = new LinkedHashMap<>();
    /** The messages that told the first and the last sign of each case. */
    private final Map<String, String> openedIn = new HashMap<>();

    private final Map<String, String> toldIn = new HashMap<>();

    private Cases(Garden garden, Troubles troubles) {
        this.garden = garden;
        this.parting = new Parting(troubles, garden.grower().zone());
    }

    /** The cases that are open today, or that today's entries closed; a planting has one for each of its troubles. */
    static List<CaseFile> of(Garden garden, LocalDate today, Troubles troubles) {
        Cases cases = new Cases(garden, troubles);
        garden.standing().forEach(cases::take);
        List<CaseFile> open = cases.files.values().stream()
                .filter(file -> ChronoUnit.DAYS.between(file.latest(), today) <= OPEN_DAYS)
                .filter(file -> !file.closed() || file.latest().equals(today))
                .filter(file -> file.latest().equals(today) || !cases.cleared(file))
                .toList();
        return cases.joined(open);
    }

    /** The cases of the year gone by, those closed or laid aside among them. */
    static List<CaseFile> ofTheYear(Garden garden, LocalDate today, Troubles troubles) {
        Cases cases = new Cases(garden, troubles);
        garden.standing().forEach(cases::take);
        return cases.joined(cases.files.values().stream()
                .filter(file -> file.opened().isAfter(today.minusYears(1)))
                .toList());
    }

    /** The cases with those made one that were told together and are one trouble after all. */
    private List<CaseFile> joined(List<CaseFile> open) {
        List<CaseFile> joined = new ArrayList<>();
        for (CaseFile file : open) {
            CaseFile same = joined.stream()
                    .filter(other -> areOne(other, file))
                    .findFirst()
                    .orElse(null);
            if (same == null) {
                joined.add(file);
            } else {
                joined.set(joined.indexOf(same), same.with(file));
            }
        }
        return joined;
    }

    private boolean areOne(CaseFile one, CaseFile other) {
        return other.isOf(one.planting(), one.crop())
                && openedIn.get(one.id()).equals(openedIn.get(other.id()))
                && parting.areOne(one, other);
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
            seen(placed(sign), day(sign.on(), line), line);
        } else if (entry instanceof Finding finding) {
            found(
                    finding.of(plantingOf(finding.planting(), finding.crop()), finding.crop()),
                    day(finding.on(), line),
                    line);
        }
    }

    private void seen(SignSeen sign, LocalDate on, Logged line) {
        List<CaseFile> open = of(sign.planting(), sign.crop());
        CaseFile same = open.stream()
                .filter(file -> !file.closed()
                        && ChronoUnit.DAYS.between(file.latest(), on) <= TOGETHER_DAYS
                        && !elsewhere(file, sign, line)
                        && parting.canBeOf(sign.sign(), file))
                .findFirst()
                .orElse(null);
        if (same == null) {
            // What it can be of, told of days ago, is looked at anew.
            open.stream()
                    .filter(file -> file.closed()
                            || ChronoUnit.DAYS.between(file.latest(), on) > OPEN_DAYS
                            || !parting.isOfAnother(sign.sign(), file))
                    .forEach(file -> files.remove(file.id()));
        }
        CaseFile file = same != null
                ? same.with(sign, on)
                : CaseFile.opened(sign, on, files.containsKey(id(sign.planting(), sign.crop())));
        files.put(file.id(), file);
        toldIn.put(file.id(), line.message());
        if (same == null) {
            openedIn.put(file.id(), line.message());
        }
    }

    /** The cases of a planting or crop, the one last spoken of first. */
    private List<CaseFile> of(String planting, String crop) {
        return files.values().stream()
                .filter(file -> file.isOf(planting, crop))
                .sorted(Comparator.comparing(CaseFile::latest).reversed())
                .toList();
    }

    private void found(Finding finding, LocalDate on, Logged line) {
        List<CaseFile> open = of(finding.planting(), finding.crop()).stream()
                .filter(file -> ChronoUnit.DAYS.between(file.latest(), on) <= OPEN_DAYS)
                .toList();
        for (CaseFile file : meant(finding, open, line)) {
            Finding own = finding.about().equals(Troubles.WORDS) && open.size() > 1
                    ? new Finding(
                            finding.planting(),
                            finding.crop(),
                            Troubles.WORDS,
                            parting.words(finding.found(), file, told(open, line)),
                            false,
                            finding.on())
                    : finding;
            if (!own.found().isEmpty()) {
                files.put(file.id(), file.with(own, on));
            }
        }
    }

    /** The troubles of one planting that a finding is of: the one asked about; how it goes is of all, else those it can tell of. */
    private List<CaseFile> meant(Finding finding, List<CaseFile> open, Logged line) {
        List<CaseFile> asked = open.stream()
                .filter(file -> finding.trouble() != null && file.signs().contains(finding.trouble()))
                .toList();
        if (open.size() < 2 || finding.about().equals(Finding.OUTCOME) && asked.isEmpty()) {
            return open;
        }
        if (!asked.isEmpty()) {
            return finding.about().equals(Finding.OUTCOME)
                    ? open.stream()
                            .filter(file -> asked.contains(file) || areOne(file, asked.get(0)))
                            .toList()
                    : asked;
        }
        List<CaseFile> told = told(open, line);
        return finding.about().equals(Troubles.WORDS)
                ? told
                : told.stream()
                        .filter(file -> parting.tellsOf(finding, file, told))
                        .toList();
    }

    /** Those told of in the same message, else the one last spoken of. */
    private List<CaseFile> told(List<CaseFile> open, Logged line) {
        List<CaseFile> told = open.stream()
                .filter(file -> line.message().equals(toldIn.get(file.id())))
                .toList();
        return told.isEmpty() ? open.subList(0, Math.min(1, open.size())) : told;
    }

    /** Rotten fruit told in the morning and curled leaves told by themselves later are two troubles. */
    private boolean elsewhere(CaseFile file, SignSeen sign, Logged line) {
        return !line.message().equals(toldIn.get(file.id()))
                && (parting.isOfAnother(sign.sign(), file)
                        || file.signs().stream()
                                .allMatch(told -> PlantPart.of(told).apartFrom(PlantPart.of(sign.sign()))));
    }

    /** What has come up no longer fails to come up. */
    private void up(Event event) {
        boolean shown =
                event.what() == What.EMERGED || event.what() == What.PRICKED_OUT || event.what() == What.PLANTED_OUT;
        if (shown) {
            of(event.planting(), event.crop()).stream()
                    .filter(file -> List.of("no-emergence").containsAll(file.signs()))
                    .forEach(file -> files.remove(file.id()));
        }
    }

    /** Plants that died are an outcome of their trouble, if it was spoken of lately. */
    private void died(Event event, Logged line) {
        if (event.what() == What.DIED && event.planting() != null) {
            LocalDate on = day(event.on(), line);
            of(event.planting(), null).stream()
                    .filter(file -> !file.closed() && ChronoUnit.DAYS.between(file.latest(), on) <= OPEN_DAYS)
                    .forEach(file -> files.put(
                            file.id(),
                            file.with(
                                    new Finding(file.planting(), file.crop(), Finding.OUTCOME, "died", false, on),
                                    on)));
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

    /** A sign of nothing named belongs to what is being talked about: the one planting in trouble these days. */
    private SignSeen placed(SignSeen sign) {
        List<CaseFile> lately = sign.planting() != null || sign.crop() != null || sign.on() == null
                ? List.of()
                : files.values().stream()
                        .filter(file ->
                                !file.closed() && ChronoUnit.DAYS.between(file.latest(), sign.on()) <= TOGETHER_DAYS)
                        .toList();
        boolean ofOne = !lately.isEmpty()
                && lately.stream()
                        .allMatch(file -> file.isOf(
                                lately.get(0).planting(), lately.get(0).crop()));
        return ofOne
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
