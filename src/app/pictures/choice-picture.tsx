/** The small drawing of each choice. */
import type { JSX } from 'preact';
import type { DraftAnswers } from '../../design/answers';
import {
  BandSketch,
  DistanceSketch,
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
import { FeedPointSketch, RadiatorSketch } from './radiators';
import { HouseEarthSketch, RouteSketch, ShackEndSketch, StationSketch } from './stations';

interface PictureProps {
  readonly question: string;
  readonly option: string;
  readonly draft: DraftAnswers;
}

export function ChoicePicture({ question, option, draft }: PictureProps): JSX.Element | null {
  switch (question) {
    case 'bands':
      return <BandSketch metres={Number.parseFloat(option)} />;
    case 'radiator':
      return <RadiatorSketch radiator={option} />;
    case 'fedAt':
      return <FeedPointSketch radiator={draft.radiator ?? 'straight-wire'} fedAt={option} />;
    case 'shackEnd':
      return <ShackEndSketch shackEnd={option} />;
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
    case 'ruleSet':
      return <DistanceSketch />;
    default:
      return option === 'true' || option === 'false' ? <YesNoSketch yes={option === 'true'} /> : null;
  }
}
