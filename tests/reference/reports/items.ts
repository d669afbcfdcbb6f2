/**
 * What two readers of reports say of each group, as short lines that can be compared: `visibility
 * 600 m`, `cloud BKN005CB`. Where they only write the same thing differently, it is written one way.
 */

import {
  DepositCoverage,
  DepositType,
  type IMetar,
  type IRunwayInfoDeposit,
  type IRunwayInfoRange,
  parseMetar,
  type Remark,
  RemarkType,
} from 'metar-taf-parser';
import { readReport } from '../../../src/core/weather/readReport';
import type { Bound, Distance, RunwayState } from '../../../src/core/weather/whole/groupTypes';

const MARKS: Readonly<Record<Bound, string>> = {
  exact: '',
  'at-least': '>=',
  above: '>',
  below: '<',
};

const two = (value: number | null) =>
  value === null ? '//' : String(Math.round(value * 100) / 100);
const distance = (d: Distance | null) => (d ? MARKS[d.bound] + two(d.value) : '//');
const withUnit = (d: Distance | null) => `${distance(d)}${d ? ` ${d.unit}` : ''}`;

/** Whole degrees as the group had them: FMH-1, 12.6.10, rounds halves up. */
const whole = (c: number) => Math.floor(c + 0.5) + 0;

const TENDENCIES = { rising: ' U', falling: ' D', steady: ' N' } as const;

/** This reader's. */
export function ourItems(text: string): string[] {
  const { weather, station, issued } = readReport(text);
  const items = [`station ${station}`];
  if (issued) items.push(`issued ${issued.day} ${issued.hour} ${issued.minute}`);
  const { type, modifiers, visibility, temperature, pressure, remarks } = weather;
  if (type) items.push(`type ${type}`);
  for (const modifier of modifiers) items.push(modifier);
  if (weather.cavok) items.push('cavok');
  if (visibility?.distance) items.push(`visibility ${withUnit(visibility.distance)}`);
  if (visibility?.undirected) items.push('no directions');
  for (const { distance: least, towards } of weather.visibilityTowards) {
    items.push(`visibility ${distance(least)} ${towards}`);
  }
  for (const range of weather.runwayVisualRange) {
    const { runway, upTo, tendency } = range;
    const most = upTo ? ` to ${distance(upTo)}` : '';
    const unit = range.distance ? ` ${range.distance.unit}` : '';
    items.push(
      `range ${runway} ${distance(range.distance)}${most}${unit}${tendency ? TENDENCIES[tendency] : ''}`,
    );
  }
  for (const { observed, vicinity, intensity, descriptor, phenomena } of weather.present) {
    if (!observed) continue;
    const sign = vicinity ? 'VC' : intensity === 'light' ? '-' : intensity === 'heavy' ? '+' : '';
    items.push(`weather ${sign}${descriptor ?? ''}${phenomena.join('')}`);
  }
  for (const { amount, baseFt, convective } of weather.clouds) {
    const kind = convective === 'not-observed' ? '' : (convective ?? '');
    items.push(`cloud ${amount ?? '///'} ${baseFt ?? '///'} ${kind}`);
  }
  if (weather.noCloud) items.push(`no cloud ${weather.noCloud}`);
  if (weather.verticalVisibility) {
    items.push(`vertical visibility ${weather.verticalVisibility.heightFt ?? '///'}`);
  }
  if (temperature && temperature.airC !== null) items.push(`air ${whole(temperature.airC)}`);
  if (temperature && temperature.dewPointC !== null) {
    items.push(`dew point ${whole(temperature.dewPointC)}`);
  }
  if (pressure && pressure.qnhHpa !== null && pressure.given !== 'inHg') {
    items.push(`pressure ${pressure.qnhHpa} hPa`);
  }
  if (pressure && pressure.qnhInHg !== null && pressure.given !== 'hPa') {
    items.push(`pressure ${two(pressure.qnhInHg)} inHg`);
  }
  for (const state of weather.runwayStates) {
    if (state.code === 'snow-closed') items.push(`closed by snow ${state.runway}`);
    else items.push(stateLine(state));
  }
  for (const { text: trend, trend: kind } of weather.trends) {
    items.push(kind === 'NOSIG' ? 'nosig' : `trend ${trend}`);
  }
  if (remarks?.peakWind) {
    const { fromDeg, speedKt, hour, minute } = remarks.peakWind;
    items.push(`peak wind ${fromDeg} ${speedKt} ${hour ?? 'same'} ${minute}`);
  }
  if (remarks && remarks.seaLevelHpa !== null) items.push(`sea level ${remarks.seaLevelHpa}`);
  for (const { meaning } of readReport(text).spans) {
    if (meaning?.code === 'temperature-tenths') {
      items.push(`tenths ${meaning.airC} ${meaning.dewPointC}`);
    }
  }
  return items;
}

function stateLine({
  runway,
  cleared,
  deposit,
  coveredPercent,
  depth,
  closed,
  braking,
}: RunwayState) {
  if (cleared) return `state ${runway} cleared`;
  const covered = coveredPercent ? coveredPercent.join('-') : '/';
  const deep = closed ? 'closed' : depth ? MARKS[depth.bound] + depth.depthMm : '//';
  return `state ${runway} ${deposit ?? '/'} ${covered} ${deep} ${braking ?? '//'}`;
}

/** The other reader's own names for the figures of a runway's state. */
const THEIR_DEPOSITS: Readonly<Record<DepositType, string>> = {
  [DepositType.NotReported]: '/',
  [DepositType.ClearDry]: 'clear-and-dry',
  [DepositType.Damp]: 'damp',
  [DepositType.WetWaterPatches]: 'wet',
  [DepositType.RimeFrostCovered]: 'rime',
  [DepositType.DrySnow]: 'dry-snow',
  [DepositType.WetSnow]: 'wet-snow',
  [DepositType.Slush]: 'slush',
  [DepositType.Ice]: 'ice',
  [DepositType.CompactedSnow]: 'compacted-snow',
  [DepositType.FrozenRidges]: 'frozen-ruts',
};
const THEIR_COVERAGES: Readonly<Record<DepositCoverage, string>> = {
  [DepositCoverage.None]: '/',
  [DepositCoverage.NotReported]: '/',
  [DepositCoverage.Less10]: '0-10',
  [DepositCoverage.From11To25]: '11-25',
  [DepositCoverage.From26To50]: '26-50',
  [DepositCoverage.From51To100]: '51-100',
};
/** As the other reader's documentation of `thickness` and `brakingCapacity` gives them. */
const THEIR_DEPTHS: Readonly<Record<string, string>> = {
  '00': '<1',
  92: '100',
  93: '150',
  94: '200',
  95: '250',
  96: '300',
  97: '350',
  98: '>=400',
  99: 'closed',
  '//': '//',
};
const THEIR_BRAKING: Readonly<Record<string, string>> = {
  91: 'poor',
  92: 'medium-poor',
  93: 'medium',
  94: 'medium-good',
  95: 'good',
  99: 'unreliable',
  '//': '//',
};

/** metar-taf-parser's; `refused` where it throws. */
export function theirItems(text: string): string[] {
  let metar: IMetar;
  try {
    metar = parseMetar(text);
  } catch {
    return ['refused'];
  }
  const items = [`station ${metar.station}`];
  if (metar.day !== undefined) items.push(`issued ${metar.day} ${metar.hour} ${metar.minute}`);
  if (metar.type) items.push(`type ${metar.type}`);
  if (metar.auto) items.push('automatic');
  if (metar.corrected) items.push('corrected');
  if (metar.nil) items.push('missing');
  if (metar.cavok) items.push('cavok');
  const mark = (indicator: string | undefined) =>
    indicator === 'P' ? '>' : indicator === 'M' ? '<' : '';
  if (metar.visibility) {
    const { indicator, value, unit, ndv, min } = metar.visibility;
    // FM 15, 15.6.1: 9999 is 10 km or more; `above 9999 m` is the same.
    const isTenKm = value === 9999 && unit === 'm';
    items.push(`visibility ${isTenKm ? '>=10000' : mark(indicator) + value} ${unit}`);
    if (ndv) items.push('no directions');
    if (min) items.push(`visibility ${min.value} ${min.direction}`);
  }
  for (const info of metar.runwaysInfo) {
    if ('minRange' in info) items.push(rangeLine(info));
    else items.push(theirState(info));
  }
  for (const { intensity, descriptive, phenomenons } of metar.weatherConditions) {
    items.push(`weather ${intensity ?? ''}${descriptive ?? ''}${phenomenons.join('')}`);
  }
  for (const { quantity, height, type } of metar.clouds) {
    const none = quantity === 'SKC' || quantity === 'NSC';
    items.push(
      none ? `no cloud ${quantity}` : `cloud ${quantity} ${height ?? '///'} ${type ?? ''}`,
    );
  }
  if (metar.verticalVisibility !== undefined) {
    items.push(`vertical visibility ${metar.verticalVisibility}`);
  }
  if (metar.temperature !== undefined) items.push(`air ${metar.temperature + 0}`);
  if (metar.dewPoint !== undefined) items.push(`dew point ${metar.dewPoint + 0}`);
  if (metar.altimeter) items.push(`pressure ${metar.altimeter.value} ${metar.altimeter.unit}`);
  if (metar.nosig) items.push('nosig');
  for (const { raw } of metar.trends) items.push(`trend ${raw}`);
  for (const remark of metar.remarks) items.push(...remarkLines(remark));
  return items;

  function rangeLine({ name, indicator, minRange, maxRange, trend, unit }: IRunwayInfoRange) {
    const sign = mark(indicator);
    const range = maxRange === undefined ? sign + minRange : `${minRange} to ${sign}${maxRange}`;
    return `range ${name} ${range} ${unit === 'FT' ? 'ft' : unit}${trend ? ` ${trend}` : ''}`;
  }
}

function theirState({ name, ...info }: IRunwayInfoDeposit): string {
  const { depositType, coverage, thickness = '', brakingCapacity = '' } = info;
  if (depositType === undefined || coverage === undefined) return `state ${name} unread`;
  const depth = THEIR_DEPTHS[thickness] ?? String(Number(thickness));
  const braking = THEIR_BRAKING[brakingCapacity] ?? String(Number(brakingCapacity) / 100);
  return `state ${name} ${THEIR_DEPOSITS[depositType]} ${THEIR_COVERAGES[coverage]} ${depth} ${braking}`;
}

function remarkLines(remark: Remark): string[] {
  switch (remark.type) {
    case RemarkType.WindPeak:
      return [
        `peak wind ${remark.degrees} ${remark.speed} ${remark.startHour ?? 'same'} ${remark.startMinute}`,
      ];
    case RemarkType.SeaLevelPressure:
      return [`sea level ${remark.pressure}`];
    case RemarkType.HourlyTemperatureDewPoint:
      return [`tenths ${remark.temperature} ${remark.dewPoint ?? null}`];
    default:
      return [];
  }
}
