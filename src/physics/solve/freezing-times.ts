import { Course, type Section } from './solidification.ts';

// One plan asks for the same section more than once, and the trials of a search ask for the same sections over and over. These
// runs are the dearest thing in a plan, so the last ones are kept and led on as far as is asked. What is kept never changes a result.

const MOST = 512;
/** By everything but the gap, then by the gap; the section that was asked for last stands last. */
const kept = new Map<string, Map<number, KeptCourse>>();

/** A course with what has been passed on it. */
class KeptCourse {
  readonly #course: Course;
  readonly #times: number[] = [0];
  /** Mean heat content of the casting at those times, J/kg above the solidus. */
  readonly #means: number[];

  constructor(section: Section) {
    this.#course = new Course(section);
    this.#means = [this.#course.flow.meanContent];
  }

  get #last(): number {
    return this.#times.length - 1;
  }

  #step(): void {
    this.#course.step(Number.POSITIVE_INFINITY);
    this.#times.push(this.#course.time);
    this.#means.push(this.#course.flow.meanContent);
  }

  /** s until the middle is solid. */
  solid(): number {
    while (Number.isNaN(this.#course.solid)) this.#step();
    return this.#course.solid;
  }

  /** s until the mean is down to a temperature in degC, and the middle solid. */
  until(temperature: number): number {
    const solid = this.solid();
    const target = this.#course.flow.heat.at(temperature);
    while ((this.#means[this.#last] as number) > target) this.#step();
    const after = this.#means.findIndex((mean) => mean <= target);
    return Math.max(solid, after === 0 ? 0 : between(target, this.#means, this.#times, after));
  }

  /** Mean temperature in degC after a time in s. */
  meanAt(time: number): number {
    while ((this.#times[this.#last] as number) < time) this.#step();
    const after = this.#times.findIndex((passed) => passed >= time);
    return this.#course.flow.heat.temperature(after === 0 ? (this.#means[0] as number) : between(time, this.#times, this.#means, after));
  }
}

/** The value of `y` where `x` has a value between its entries before and after. */
function between(at: number, x: readonly number[], y: readonly number[], after: number): number {
  const [x0, x1, y0, y1] = [x[after - 1], x[after], y[after - 1], y[after]] as [number, number, number, number];
  return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
}

/**
 * s from the full cavity until a section is solid and its mean has come down to a temperature in degC.
 * @throws RangeError when it is not there within days, as do the others.
 */
export function ejectionTimeOf(section: Section, mean: number): number {
  return courseOf(section).until(mean);
}

/** s until the middle of a section is solid; the gap that opens then has no say in it, so any course of the section will do. */
export function timeToSolid(section: Section): number {
  const courses = coursesOf(section);
  for (const course of courses.values()) return course.solid();
  return courseIn(courses, section).solid();
}

/** Mean temperature of a section in degC, a time in s after the cavity was full. */
export function meanAfter(section: Section, time: number): number {
  return courseOf(section).meanAt(time);
}

function courseOf(section: Section): KeptCourse {
  return courseIn(coursesOf(section), section);
}

function courseIn(courses: Map<number, KeptCourse>, section: Section): KeptCourse {
  let course = courses.get(section.gap);
  if (course === undefined) {
    course = new KeptCourse(section);
    courses.set(section.gap, course);
  }
  return course;
}

function coursesOf(section: Section): Map<number, KeptCourse> {
  const key = keyOf(section);
  const courses = kept.get(key) ?? new Map<number, KeptCourse>();
  // Set anew it stands last, so that the first is the one that nobody has asked for the longest.
  kept.delete(key);
  kept.set(key, courses);
  const [oldest] = kept.keys();
  if (kept.size > MOST && oldest !== undefined) kept.delete(oldest);
  return courses;
}

/** Everything but the gap. */
function keyOf({ metal, steel, half, gateTemperature, dieTemperature, interface: coefficient }: Section): string {
  const numbers = [...Object.values(metal), steel.density, steel.conductivity, steel.specificHeat, half, gateTemperature, dieTemperature, coefficient];
  return numbers.join(' ');
}
