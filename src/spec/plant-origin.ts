import type { YamlPath } from '../kernel/located-yaml.ts';
import type { Place, SourceText } from '../kernel/place.ts';

/** Reference that inputs of a plant file carry as their source. */
export const PLANT_SOURCE = 'PLANT';

/** Where the pieces of a plant were written; a plant that came with the tool was written in no file of the user's. */
export interface PlantOrigin {
  readonly source: SourceText;
  readonly place: (path: YamlPath, part?: 'value' | 'key') => Place | undefined;
}
