import { describe, expect, it } from 'vitest';
import { calc, forAll } from './calc.ts';

/** Equal to about ten digits. */
const same = (a: number, b: number): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-10 * Math.max(Math.abs(a), Math.abs(b)));

describe('trimming', () => {
  it('the force is in proportion to strength, section and allowance', () => {
    forAll(
      [
        [20, 350],
        [1, 20000],
        [1, 1.3],
      ],
      (shear_strength, sheared_area, factor) => {
        const force = calc('finish.trim-force', { shear_strength, sheared_area, factor });
        same(calc('finish.trim-force', { shear_strength: 2 * shear_strength, sheared_area, factor }), 2 * force);
        same(calc('finish.trim-force', { shear_strength, sheared_area: 3 * sheared_area, factor }), 3 * force);
        same(calc('finish.trim-force', { shear_strength, sheared_area, factor: 1 }) * factor, force);
        same(calc('finish.trim-force', { shear_strength, sheared_area: 0, factor }), 0);
      },
    );
  });
  it('thicker flash asks for more force by what it adds to the section, and gates are cut without any flash', () => {
    forAll(
      [
        [10, 3000],
        [0.02, 0.5],
        [1, 2000],
      ],
      (length, thickness, gates) => {
        const flash = calc('finish.strip-section', { length, thickness });
        same(calc('finish.strip-section', { length, thickness: 2 * thickness }), 2 * flash);
        same(calc('finish.cavity-section', { gates, flash }) - calc('finish.cavity-section', { gates, flash: 0 }), flash);
        same(calc('finish.cavity-section', { gates }), gates);
      },
    );
  });
  it('gates and overflows shorten the flash, which is never less than none', () => {
    forAll(
      [
        [100, 3000],
        [1, 1500],
        [0, 40],
        [1, 60],
      ],
      (parting_line, gate_width, overflows, overflow_width) => {
        const length = calc('finish.flash-length', { parting_line, gate_width, overflows, overflow_width });
        expect(length).toBeGreaterThanOrEqual(0);
        expect(length).toBeLessThanOrEqual(Math.max(parting_line - gate_width, 0));
      },
    );
  });
});

describe('impregnation', () => {
  it('pays while a casting costs more to scrap than to seal, and never more than all of it is saved', () => {
    forAll(
      [
        [10, 5000],
        [0.1, 20],
        [1, 50],
        [1, 1000],
        [0, 100],
      ],
      (parts, leaking, price, part_cost, still) => {
        const days = 200;
        const scrap = calc('finish.scrap-cost', { parts, leaking, part_cost, days });
        const sealed = calc('finish.impregnation-cost', { parts, leaking, price, still, part_cost, days });
        expect(sealed < scrap).toBe(price + (part_cost * still) / 100 < part_cost);
        same(calc('finish.impregnation-cost', { parts, leaking, price: 0.0, still: 100, part_cost, days }), scrap);
      },
    );
  });
});

describe('die lubricant', () => {
  it('the film that the concentrate leaves is the film that it was reckoned for', () => {
    forAll(
      [
        [10, 50000],
        [0.5, 20],
        [10, 60],
        [20, 90],
      ],
      (area, film, solids, efficiency) => {
        const concentrate = calc('lubricant.concentrate', { area, film, solids, efficiency });
        same(calc('lubricant.film-left', { concentrate, area, solids, efficiency }), film);
        same(calc('lubricant.concentrate', { area: 2 * area, film, solids, efficiency }), 2 * concentrate);
      },
    );
  });
  it('dilution changes the water and not the concentrate', () => {
    forAll(
      [
        [0.1, 100],
        [1, 150],
      ],
      (concentrate, dilution) => {
        const spray = calc('lubricant.diluted', { concentrate, dilution });
        same(calc('lubricant.concentrate-used', { spray, dilution }), concentrate);
      },
    );
  });
  it('a spray sized for the cooling boils just the share that stays on the die', () => {
    forAll(
      [
        [1, 5000],
        [20, 90],
        [20, 120],
      ],
      (boiled, efficiency, dilution) => {
        const spray = calc('lubricant.cooling-spray', { boiled, efficiency, dilution });
        same(calc('lubricant.boiled-share', { boiled, spray, dilution }), efficiency);
      },
    );
  });
  it('colder water takes more heat, and boiling most of it', () => {
    forAll([[5, 80]], (temperature) => {
      const water = { specific_heat: 4180, latent_heat: 2257 };
      const heat = calc('lubricant.evaporation-heat', { temperature, ...water });
      expect(heat).toBeGreaterThan(calc('lubricant.evaporation-heat', { temperature: temperature + 5, ...water }));
      expect(heat - 2257).toBeLessThan(2257 / 5);
    });
  });
});
