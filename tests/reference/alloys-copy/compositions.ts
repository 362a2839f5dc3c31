/*
 * Limits of composition, wt %, typed a second time; `<` at most, `>` at least. A mark behind them is that of the row: d derived
 * in part, m from memory; none: read in a source. Zinc: International Zinc Association after EN 12844, IMF, ASTM B86-2018.
 * Aluminium: NADCA Table A-3-1 (1994) and a reprint, JIS H 5302:2006, EN 1706 limits, data sheet after EN 1706:2020.
 * Magnesium: AZoM 8670 and 9252, ASM data on AM60. Copper: Copper Development Association, Conex, Kitamura, Pace, AZoM 9044.
 */
export const COMPOSITIONS = `
Zamak 2 | Al 3.7-4.3, Cu 2.7-3.3, Mg 0.025-0.05, Fe <0.05, Pb <0.005, Cd <0.005, Sn <0.002, Ni <0.02, Si <0.03
Zamak 3 | Al 3.7-4.3, Cu <0.1, Mg 0.025-0.05, Fe <0.05, Pb <0.005, Cd <0.005, Sn <0.002, Ni <0.02, Si <0.03
Zamak 5 | Al 3.7-4.3, Cu 0.7-1.2, Mg 0.025-0.05, Fe <0.05, Pb <0.005, Cd <0.005, Sn <0.002, Ni <0.02, Si <0.03
Zamak 7 | Al 3.5-4.3, Cu <0.25, Mg 0.005-0.02, Fe <0.075, Pb <0.003, Cd <0.002, Sn <0.001, Ni 0.005-0.02
ZA-8 | Al 8-8.8, Cu 0.8-1.3, Mg 0.015-0.03, Fe <0.06, Pb <0.006, Cd <0.006, Sn <0.003, Ni <0.02, Si <0.045
ZA-12 | Al 10.5-11.5, Cu 0.5-1.2, Mg 0.01-0.03, Fe <0.075, Pb <0.006, Cd <0.006, Sn <0.003
ZA-27 | Al 25-28, Cu 2-2.5, Mg 0.01-0.02, Fe <0.1, Pb <0.004, Cd <0.003, Sn <0.002
360 | Si 9-10, Fe <2, Cu <0.6, Mn <0.35, Mg 0.4-0.6, Ni <0.5, Zn <0.5, Sn <0.15
A360 | Si 9-10, Fe <1.3, Cu <0.6, Mn <0.35, Mg 0.4-0.6, Ni <0.5, Zn <0.5, Sn <0.15
380 | Si 7.5-9.5, Fe <2, Cu 3-4, Mn <0.5, Mg <0.1, Ni <0.5, Zn <3, Sn <0.35
A380 | Si 7.5-9.5, Fe <1.3, Cu 3-4, Mn <0.5, Mg <0.1, Ni <0.5, Zn <3, Sn <0.35
383 | Si 9.5-11.5, Fe <1.3, Cu 2-3, Mn <0.5, Mg <0.1, Ni <0.3, Zn <3, Sn <0.15
384 | Si 10.5-12, Fe <1.3, Cu 3-4.5, Mn <0.5, Mg <0.1, Ni <0.5, Zn <3, Sn <0.35
B390 | Si 16-18, Fe <1.3, Cu 4-5, Mn <0.5, Mg 0.45-0.65, Ni <0.1, Zn <1.5, Sn <0.2, Ti <0.2
413 | Si 11-13, Fe <2, Cu <1, Mn <0.35, Mg <0.1, Ni <0.5, Zn <0.5, Sn <0.15
A413 | Si 11-13, Fe <1.3, Cu <1, Mn <0.35, Mg <0.1, Ni <0.5, Zn <0.5, Sn <0.15
C443 | Si 4.5-6, Fe <2, Cu <0.6, Mn <0.35, Mg <0.1, Ni <0.5, Zn <0.5, Sn <0.15
518 | Si <0.35, Fe <1.8, Cu <0.25, Mn <0.35, Mg 7.5-8.5, Ni <0.15, Zn <0.15, Sn <0.15
ADC12 | Si 9.6-12, Fe <1.3, Cu 1.5-3.5, Mn <0.5, Mg <0.3, Ni <0.5, Zn <1, Sn <0.2, Pb <0.2, Ti <0.3
EN AC-46000 | Si 8-11, Fe <1.3, Cu 2-4, Mn <0.55, Mg 0.05-0.55, Ni <0.55, Zn <1.2, Sn <0.15, Cr <0.15, Pb <0.35, Ti <0.25
EN AC-46100 | Si 10-12, Fe <1.1, Cu 1.5-2.5, Mn <0.55, Mg <0.3, Ni <0.45, Zn <1.7, Sn <0.15, Cr <0.15, Pb <0.25, Ti <0.25
EN AC-43400 | Si 9-11, Fe <1, Cu <0.1, Mn <0.55, Mg 0.2-0.5, Ni <0.15, Zn <0.15, Sn <0.05, Pb <0.15, Ti <0.2
EN AC-44300 | Si 10.5-13.5, Fe <1, Cu <0.1, Mn <0.55, Zn <0.15, Ti <0.15
EN AC-47100 | Si 10.5-13.5, Fe <1.3, Cu 0.7-1.2, Mn <0.55, Mg <0.35, Ni <0.3, Zn <0.55, Sn <0.1, Cr <0.15, Pb <0.2, Ti <0.2
EN AC-43500 | Si 9-11.5, Fe <0.25, Cu <0.05, Mn 0.4-0.8, Mg 0.1-0.6, Ni <0.05, Zn <0.07, Sn <0.05, Cr <0.05, Pb <0.05, Ti <0.2
AZ91D | Al 8.3-9.7, Zn 0.35-1, Mn 0.15-0.5, Si <0.1, Cu <0.03, Ni <0.002, Fe <0.005
AM60B | Al 5.5-6.5, Mn >0.25, Zn <0.22, Si <0.1, Cu <0.01, Ni <0.002, Fe <0.005
AM50A | Al 4.4-5.4, Mn 0.26-0.6, Zn <0.22, Si <0.1, Cu <0.01, Ni <0.002, Fe <0.004 | m
AS41B | Al 3.5-5, Si 0.5-1.5, Mn >0.35, Zn <0.12, Cu <0.02, Ni <0.002, Fe <0.0035
AE42 | Al 3.4-4.6, RE 2-3, Mn 0.1-0.5, Zn <0.22, Cu <0.05, Ni <0.005, Fe <0.005 | m
AE44 | Al 3.5-4.5, RE 3.5-4.5, Mn 0.15-0.5, Zn <0.2, Cu <0.01, Ni <0.002, Fe <0.005 | m
C85700 | Cu 58-64, Zn 32-40, Pb 0.8-1.5, Sn 0.5-1.5, Fe <0.7, Ni <1, Al <0.8, Si <0.05
C85800 | Cu 57-69, Zn 31-41, Pb <1.5, Sn <1.5, Fe <0.5, Ni <0.5, Al <0.55, Si <0.25, Mn <0.25, As <0.05, Sb <0.05, S <0.05, P <0.01
C86500 | Cu 55-60, Zn 36-42, Pb <0.4, Sn <1, Fe 0.4-2, Ni <1, Al 0.5-1.5, Mn 0.1-1.5
C87800 | Cu 80-83, Zn 12-16, Si 3.8-4.2, Pb <0.15, Sn <0.25, Fe <0.15, Al <0.15, Mn <0.15, Mg <0.01
C87900 | Cu 63-67, Zn 30-36, Si 0.75-1.25, Pb <0.25, Sn <0.25, Fe <0.15, Al <0.15, Mn <0.15 | d
C99700 | Cu >54, Zn 19-25, Mn 11-15, Ni 4-6, Al 0.5-3, Pb <2, Sn <1, Fe <1
CY44A | Sn 90-92, Sb 4-5, Cu 4-5 | m
YC135A | Sn 82-84, Sb 12-14, Cu 4-6 | m
PY1815A | Sn 64-66, Sb 14-16, Pb 17-19, Cu 1.5-2.5 | m
Y10A | Pb 89-91, Sb 9.25-10.75 | m
YT155A | Pb 79-81, Sb 14-16, Sn 4-6 | m
`;
