package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Units;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Pots, trays or a bed to fill, of which the number before the size counts them: "12 3-litre pots", "two 24 cell trays". */
final class PotsAsked {
    private static final String SIZE = "(\\d+(?:[.,]\\d+)?)[\\s-]*";
    private static final String POTS =
            "[\\s-]*(?:deep |plastic |square |round |plant |flower )?(?:pots?|containers?|tubs?|planters?|buckets?)\\b";
    private static final String WIDE = "(cm|centimetres?|centimeters?|inch(?:es)?|in|\"|”|″)";
    private static final Pattern VOLUME_POTS = Pattern.compile(SIZE + FeedLabels.VOLUME + POTS);
    private static final Pattern WIDE_POTS = Pattern.compile(SIZE + WIDE + POTS);
    /** "24 pots of 9 cm". */
    private static final Pattern POTS_OF = Pattern.compile(
            "(\\d+) (?:deep |plastic |square |round |plant )?pots? (?:of|at) " + SIZE + WIDE + "(?![a-z])");

    private static final Pattern CELL_TRAYS =
            Pattern.compile("(\\d+)[\\s-]*(?:cell|module|plug|hole)s?[\\s-]*(tray|flat)(s?)\\b");
    private static final Pattern CELLS = Pattern.compile("(\\d{1,3})[\\s-]*(?:cell|module|plug|hole)s?\\b");
    private static final Pattern TRAYS =
            Pattern.compile("\\b(?:(cell|module|modular|plug) |seed )?(?:tray|flat)(s?)\\b(?: of (\\d+))?");
    private static final double CM_PER_INCH = 2.54;
    private static final double CM_PER_M = 100;
    private static final double MM_PER_M = 1000;
    private static final double LITRES_A_CUBIC_METRE = 1000;
    private static final int SIDES = 3;
    /** Cells of a tray told to have some, but not how many; they do not change what it holds. */
    private static final double SOME_CELLS = 24;

    private static final String CELLS_OF_A_TRAY = "cells";

    private PotsAsked() {}

    /** Whether pots of so many litres are told. */
    static boolean sized(String text) {
        return VOLUME_POTS.matcher(text).find();
    }

    /** How many cells the grower's own tray has: "a 42 cell tray", "42 cells". */
    static Optional<Integer> cells(Passage passage) {
        Matcher cells = CELLS.matcher(passage.message().toLowerCase(Locale.ROOT));
        return cells.find() ? Optional.of(Integer.valueOf(cells.group(1))).filter(told -> told > 1) : Optional.empty();
    }

    /** The question with pots or trays told in it, as it is when none are. */
    static Inquiry in(Inquiry inquiry, Passage passage) {
        String text = passage.message().toLowerCase(Locale.ROOT);
        Units units = passage.situation().grower().units();
        Inquiry bare = bedWithoutUnit(inquiry, passage);
        if (!bare.equals(inquiry)) {
            return bare;
        }
        Matcher volume = VOLUME_POTS.matcher(text);
        if (volume.find()) {
            double litres = FeedLabels.number(volume.group(1)) * FeedLabels.litres(volume.group(2), units);
            return inquiry.with(count(passage, volume.start(), inquiry.count()), null, litres, "L");
        }
        Matcher wide = WIDE_POTS.matcher(text);
        if (wide.find()) {
            return inquiry.with(
                    count(passage, wide.start(), inquiry.count()), across(wide.group(1), wide.group(2)), null, null);
        }
        Matcher of = POTS_OF.matcher(text);
        if (of.find()) {
            return inquiry.with(Integer.valueOf(of.group(1)), across(of.group(2), of.group(3)), null, null);
        }
        Inquiry trays = trays(inquiry, passage, text);
        return trays.equals(inquiry) ? bed(inquiry, passage) : trays;
    }

    /** "A bed 1 m x 2 m, 20 cm deep": its litres, told as those of one. */
    private static Inquiry bed(Inquiry inquiry, Passage passage) {
        List<Quantity> sides = passage.quantities().stream()
                .filter(side -> side.unit().equals("m") || side.unit().equals("mm"))
                .toList();
        if (sides.size() != SIDES) {
            return inquiry;
        }
        double litres = LITRES_A_CUBIC_METRE;
        for (Quantity side : sides) {
            litres *= metres(side);
        }
        return inquiry.with(null, null, litres, "L");
    }

    /** "A 4x8 bed 10 inches deep". */
    private static Inquiry bedWithoutUnit(Inquiry inquiry, Passage passage) {
        double[] sides = SizesAsked.bareSides(passage, 0, passage.size());
        List<Quantity> depths = passage.quantities().stream()
                .filter(depth -> depth.unit().equals("m") || depth.unit().equals("mm"))
                .toList();
        if (sides.length == 0 || depths.size() != 1) {
            return inquiry;
        }
        return inquiry.with(null, null, LITRES_A_CUBIC_METRE * sides[0] * sides[1] * metres(depths.get(0)), "L");
    }

    private static double metres(Quantity side) {
        return side.unit().equals("mm") ? side.value() / MM_PER_M : side.value();
    }

    private static double across(String number, String unit) {
        return FeedLabels.number(number) * (unit.startsWith("c") ? 1 : CM_PER_INCH) / CM_PER_M;
    }

    private static Inquiry trays(Inquiry inquiry, Passage passage, String text) {
        Matcher cells = CELL_TRAYS.matcher(text);
        if (cells.find()) {
            Integer before = count(passage, cells.start(), null);
            int told = Integer.parseInt(cells.group(1));
            boolean one = before == null && cells.group(3).isEmpty();
            // "6 cell trays" are six trays of cells.
            int trays = one ? 1 : told;
            boolean sized = before != null || one;
            return inquiry.with(
                    before == null ? Integer.valueOf(trays) : before,
                    null,
                    sized ? Double.valueOf(told) : Double.valueOf(SOME_CELLS),
                    CELLS_OF_A_TRAY);
        }
        Matcher plain = TRAYS.matcher(text);
        if (!plain.find()) {
            // "Compost for 24 cells": one tray of so many.
            return cells(passage)
                    .map(told -> inquiry.with(1, null, Double.valueOf(told), CELLS_OF_A_TRAY))
                    .orElse(inquiry);
        }
        Integer before = count(passage, plain.start(), plain.group(2).isEmpty() ? Integer.valueOf(1) : null);
        double each =
                plain.group(3) != null ? Double.parseDouble(plain.group(3)) : plain.group(1) != null ? SOME_CELLS : 0;
        return inquiry.with(before, null, each, CELLS_OF_A_TRAY);
    }

    /** The whole number told right before a size. */
    private static Integer count(Passage passage, int letter, Integer otherwise) {
        return passage.numbers().stream()
                .filter(number -> number.whole() && !number.ordinal() && number.value() > 0)
                .filter(number -> {
                    int gap = letter - passage.tokens().get(number.end() - 1).to();
                    return gap >= 0 && gap <= 3;
                })
                .max(Comparator.comparingInt(NumberSaid::end))
                .map(number -> (int) number.value())
                .orElse(otherwise);
    }
}
