import type { joiningWords as English } from '../en/joinings.ts';

export const joinings: ReturnType<typeof English> = {
  series: 'Beide spoelen in serie',
  parallel: 'Beide spoelen parallel',
  slugAlone: 'Alleen de stiftspoel',
  screwAlone: 'Alleen de schroefspoel',
  seriesReversed: 'In serie, andersom',
  seriesInside: 'Beide spoelen in serie, zoals binnenin verbonden',
  reversed: 'Andersom',
  whole: 'De hele spoel',
  fromTap: 'Alleen vanaf de aftakking',
  hotMetal:
    'De metalen plaat zit binnenin aan één einde vast: zo om voert hij signaal, bromt hij, en sluit hij het geluid kort waar hij de snaren of folie raakt. Geef het metaal eerst een eigen massadraad.',
  unseenMetal:
    'Geen meetpen kon bij het metaal van dit element. Zit zijn kap of plaat binnenin aan een draad vast, dan komt zo om signaal op dat metaal: het bromt, en sluit het geluid kort waar het snaren of folie raakt. Zoek dat uit voor je dichtmaakt.',
  splitSlugHot:
    'Voor een coil split gaat de draad van de verbinding naar een schakelaar: aan massa blijft de stiftspoel over, aan signaal de schroefspoel.',
  splitScrewHot:
    'Voor een coil split gaat de draad van de verbinding naar een schakelaar: aan massa blijft de schroefspoel over, aan signaal de stiftspoel.',
  splitOfTwoSlugHot:
    'Voor een coil split gaan deze twee naar een schakelaar: aan massa blijft de stiftspoel over, aan signaal de schroefspoel.',
  splitOfTwoScrewHot:
    'Voor een coil split gaan deze twee naar een schakelaar: aan massa blijft de schroefspoel over, aan signaal de stiftspoel.',
};
