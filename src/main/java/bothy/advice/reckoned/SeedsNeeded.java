package bothy.advice.reckoned;

/**
 * Seeds to sow for a wanted number of plants.
 *
 * @param plants plants wanted
 * @param seeds seeds that give them in nineteen cases of twenty
 * @param germinationPercent chance that was taken for one seed, %
 * @param seedBasis what that rests on: "seed-on-sale" or "seed-by-age"
 * @param cells cells at the sheet's seeds a cell
 * @param trays trays of so many cells
 * @param cellsPerTray cells in one tray
 */
public record SeedsNeeded(
        String planting,
        int plants,
        int seeds,
        double germinationPercent,
        String seedBasis,
        int cells,
        int trays,
        int cellsPerTray) {}
