/*
 * The other published figures beside those of `properties.ts`, typed a second time; several behind one name come from several
 * works. Marks as there. Sheets of S. Mueller after EN 12844, zamak data sheets, IMF (7.5, 15 and 25 ksi), MakeItFrom, MatWeb,
 * Lunt, Meridian, Daiki (measured), LM24 page, Conex, Pace, Kitamura, AIME 1939, AZoM 9044 (its SI column, a misprint).
 */
export const OTHERS = `
Zamak 2 | tensile_strength 397, yield_strength 361, density 6.8, modulus 96, hardness_brinell 130, elongation 6, casting_temperature 420-425
Zamak 3 | tensile_strength 308 268, yield_strength 268 208, density 6.7, modulus 96, hardness_brinell 97, elongation 6.3, latent_heat 124d, casting_temperature 400-420 425
Zamak 5 | tensile_strength 331, yield_strength 295, density 6.7, modulus 96, hardness_brinell 114, elongation 3.6, casting_temperature 400-420
ZA-8 | tensile_strength 387, yield_strength 319, modulus 96, conductivity 112, fatigue_strength 52
ZA-12 | tensile_strength 404, yield_strength 320 140, solidification_shrinkage 0.7, modulus 82.7, fatigue_strength 103
ZA-27 | fatigue_strength 172 103, tensile_strength 426, yield_strength 365
A360 | latent_heat 530, liquidus 680, solidus 590
A380 | latent_heat 389 515d, conductivity 109, solidus 521, liquidus 593, density 2.76, electrical_conductivity 23m
383 | density 2.68, conductivity 125, solidus 557, liquidus 596
384 | latent_heat 389 550, electrical_conductivity 23, conductivity 92
B390 | solidus 580, liquidus 580, fatigue_strength 170, modulus 76
413 | latent_heat 570, conductivity 140
A413 | latent_heat 570
C443 | latent_heat 470, solidus 600
518 | solidus 560, liquidus 620
EN AC-46000 | tensile_strength 320, yield_strength 150, elongation 1-3
EN AC-43400 | latent_heat 540, solidus 590, tensile_strength 240m, yield_strength 140m, elongation 1m, hardness_brinell 70m
EN AC-43500 | latent_heat 550, solidus 590, tensile_strength 220-300 323, yield_strength 140-170 159, density 2.6, elongation 8.8
AZ91D | conductivity 51 78 72, latent_heat 350, solidus 435 421, liquidus 595 596, tensile_strength 240, yield_strength 160, fatigue_strength 70m, hardness_brinell 70
AM60B | solidus 435, tensile_strength 241 225, elongation 12, conductivity 61, fatigue_strength 70m
AM50A | solidus 415, tensile_strength 210, yield_strength 125
AS41B | latent_heat 370 373m, solidus 530, liquidus 600 620
AE42 | solidus 565m, liquidus 625
C85700 | tensile_strength 310 276, yield_strength 110 97
C85800 | density 8, liquidus 910
C86500 | tensile_strength 489m, yield_strength 193m, elongation 30m, hardness_brinell 100m
C87800 | modulus 138, tensile_strength 590 513, density 8.15, liquidus 871
C99700 | modulus 1147
`;
