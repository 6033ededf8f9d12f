package bothy.advice.reckoned;

/**
 * Seeds to sow for a wanted number of plants.
 *
 * @param plants plants wanted
 * @param seeds seeds that give them in nineteen cases of twenty
 * @param germinationPercent chance that was taken for one seed, %
 * @param seedBasis what that rests on: "seed-on-sale", "seed-by-age" or, of a germination that the grower told, "seed-as-told"
 * @param cells cells in which they stand: one plant a cell where cells are thinned to one
 * @param inCells seeds in all of these cells
 * @param perCell seeds to a cell that is thinned to one, {@code null} for a single seed or where none is thinned
 * @param clump seeds to a cell whose seedlings are left together, {@code null} otherwise
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
        int inCells,
        Integer perCell,
        Integer clump,
        int trays,
        int cellsPerTray) {}
