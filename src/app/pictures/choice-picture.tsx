/** The small drawing of each choice of the later questions. */
import type { JSX } from 'preact';
import type { PictureProps } from './first-picture';
import {
  GroundSketch,
  LengthChoiceSketch,
  LineSketch,
  LoopPlaneSketch,
  LoopShapeSketch,
  ModeSketch,
  RegionSketch,
  ReturnPathSketch,
  WireSketch,
  YesNoSketch,
} from './materials';
import { HouseEarthSketch, RouteSketch, StationSketch } from './stations';

export function ChoicePicture({ question, option }: PictureProps): JSX.Element | null {
  switch (question) {
    case 'lengthChoice':
      return <LengthChoiceSketch choice={option} />;
    case 'mode':
      return <ModeSketch mode={option} />;
    case 'feedLine':
      return <LineSketch line={option} />;
    case 'feedLineRoute':
      return <RouteSketch along={option === 'along'} />;
    case 'returnPath':
      return <ReturnPathSketch returnPath={option} />;
    case 'wire':
      return <WireSketch wire={option} />;
    case 'ground':
      return <GroundSketch ground={option} />;
    case 'loopShape':
      return <LoopShapeSketch shape={option} />;
    case 'loopPlane':
      return <LoopPlaneSketch plane={option} />;
    case 'station':
      return <StationSketch station={option} />;
    case 'houseEarth':
      return <HouseEarthSketch houseEarth={option} />;
    case 'region':
      return <RegionSketch region={option} />;
    default:
      return option === 'true' || option === 'false' ? <YesNoSketch yes={option === 'true'} /> : null;
  }
}
