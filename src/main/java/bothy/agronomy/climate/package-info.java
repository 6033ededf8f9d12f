/**
 * What days of weather mean for plants: degree days, frost dates of a station's record and their chances, monthly normals, and the
 * weather in which blight, poor fruit set, bolting or frost harm are to be expected. Days come in as plain numbers; the caller knows
 * whether they were observed, forecast or told.
 */
package bothy.agronomy.climate;
