/**
 * How much water plants use and when the soil must be watered: reference evapotranspiration, crop coefficients and the daily balance of
 * the soil water after Allen, Pereira, Raes and Smith 1998, Crop evapotranspiration (FAO Irrigation and Drainage Paper 56, here "FAO-56"),
 * whose equation numbers stand at each formula. Lengths of water are mm (L a m²), radiation is MJ m⁻² a day, vapour pressure kPa.
 */
package bothy.agronomy.water;
