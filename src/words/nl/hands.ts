import type { handWords as English } from '../en/hands.ts';

export const hands: ReturnType<typeof English> = {
  parts: 'Delen van dit scherm',
  look: 'Kijk',
  enter: 'Toets',
  more: 'Meer',

  backToTheReading: 'Terug naar de meting',
  whatIsOl: 'Hoe ziet OL eruit?',
  fingers: 'Houd je vingers van de punten: je lichaam is ongeveer een megohm naast wat je meet.',

  explained: {
    ohms: {
      title: 'Een meting in ohm',
      drawn: 'Een meter op ohm toont 7.42 k, met een punt aan elk eind van een spoel.',
      what: 'Hoe moeilijk stroom van de ene punt naar de andere komt. Een spoel heeft duizenden ohms, een draad bijna geen.',
      how: 'Zet de meter op Ω. Kies je het bereik met de hand, begin dan bij 20k; hoger als hij OL toont, lager als hij 0.00 toont.',
      tells:
        'Een losse draad, een kortsluiting en een verkeerde waarde zie je erin. Hoe om een spoel is aangesloten niet.',
    },
    beep: {
      title: 'De piep',
      drawn: 'Een meter piept terwijl zijn twee punten hetzelfde metaal raken.',
      what: 'De meter piept waar metaal zijn punten verbindt, en zwijgt door een spoel heen.',
      how: 'Zet de meter op de piep. Houd eerst de punten tegen elkaar: dan moet hij piepen.',
      tells:
        'Een losse draad, en metaal dat raakt wat het niet mag raken. Een piep is geen nul: ook een slechte soldeerplek van een paar ohm piept.',
    },
    turn: {
      title: 'Aan een knop draaien',
      drawn: 'Twee lijnen: de ene loopt vloeiend op, de andere breekt af en komt terug.',
      what: 'Het getal op de meter terwijl een knop van het ene eind naar het andere gaat.',
      how: 'Zet de meter op Ω. Draai de knop langzaam van 0 naar 10 en kijk hoe het getal meeloopt.',
      tells:
        'Een versleten baan springt. Een knop die niets verandert is los van wat er gemeten wordt.',
    },
    flex: {
      title: 'Een draad bewegen',
      drawn: 'Een draad wordt heen en weer gebogen; de lijn breekt af bij een sprong.',
      what: 'Of het getal blijft staan terwijl één draad beweegt.',
      how: 'Houd beide punten stil en beweeg alleen de draad die gevraagd wordt.',
      tells: 'Alleen zo vind je een soldeerplek die in rust houdt en bij beweging loslaat.',
    },
    tap: {
      title: 'Staal van een spoel trekken',
      drawn: 'Een schroevendraaier wordt van een spoel getrokken; het getal slaat uit naar plus.',
      what: 'Een spoel geeft even een kleine spanning als er staal van weggaat. Het teken telt.',
      how: 'Zet de meter op gelijkspanning, 200 mV of 2 V. Leg een schroevendraaier op de spoel, wacht op nul, trek hem snel weg. Kijk welke kant het getal op slaat.',
      tells:
        'Spoelen die samen spelen moeten dezelfde kant op slaan, anders klinken ze dun en hol. Aan ohms zie je dat nooit.',
    },
    farads: {
      title: 'Een condensator apart',
      drawn: 'Een condensator met één poot in de lucht, een punt op elke poot.',
      what: 'Hoeveel een condensator kan bevatten, in nanofarad.',
      how: 'Zet de meter op het condensatorbereik. Eén poot van de condensator moet los zijn.',
      tells:
        'Met een kapotte condensator doet een toonknop niets; met een kortgesloten maakt hij het geluid uit.',
    },
    listen: {
      title: 'Luisteren',
      drawn: 'Een kabel in de jack, en geluid.',
      what: 'Hoe de gitaar klinkt in één stand van schakelaar en knoppen, naast hoe het hoort.',
      how: 'Sluit aan met laag volume, zet de knoppen zoals getekend, en speel.',
      tells:
        'Stil, zwak, dun, dof en brom wijzen elk op andere fouten. Dun en hol wijst op spoelen die elkaar tegenwerken.',
    },
    touch: {
      title: 'Een hand op het metaal',
      drawn: 'Een vinger op metaal; de golf van de brom wordt kleiner.',
      what: 'Of de brom verandert als je snaren, jack of plaat aanraakt.',
      how: 'Sluit aan met laag volume, speel niet, en leg een hand op het metaal.',
      tells:
        'Metaal aan massa maakt de brom zachter. Wordt hij harder, of gebeurt er niets, dan ontbreekt er een massa.',
    },
    hum: {
      title: 'Brom met de microfoon',
      drawn: 'Een telefoon naast de versterker; twee kolommen brom, een hoge en een lage.',
      what: 'Hoeveel zachter of luider de brom in de ene stand is dan in een andere.',
      how: 'Sluit aan met laag volume, leg een hand op de snaren, en meet beide zonder gitaar of telefoon te verplaatsen.',
      tells:
        'Twee spoelen met tegengestelde wikkeling nemen samen de brom weg. Blijft hij, dan is er een stil of omgekeerd.',
    },
    look: {
      title: 'Goed kijken',
      drawn:
        'Vier soldeerplekken: glad, korrelig, los van het oogje, en met soldeer tot op het volgende oogje.',
      what: 'Hoe een soldeerplek eruitziet: glad en glanzend, grijs en korrelig, los, of doorgelopen naar de buurman.',
      how: 'Gebruik goed licht, en een loep als je die hebt.',
      tells:
        'Slechte soldeerplekken zien er meestal slecht uit, en soms een goede ook: kijken telt mee, en bewijst niets.',
    },
    pole: {
      title: 'Een kompas boven een spoel',
      drawn: 'Een kompas boven een spoel, met een gedraaide naald.',
      what: 'Welke pool van zijn magneet een spoel boven heeft.',
      how: 'Houd een kompas boven de spoel. De noordkant wijst naar een zuidpool, de zuidkant naar een noordpool.',
      tells: 'Twee spoelen die brom opheffen hebben boven tegengestelde polen.',
    },
  },
  atHand: 'Volgende keer bij de hand',
  putItThere: 'Lugwise kan op je beginscherm staan en opent daar zonder netwerk.',
  putItThereByHand:
    'Zo krijg je Lugwise op je beginscherm, ook zonder netwerk: raak in Safari Deel aan, en dan Zet op beginscherm.',
  toHomeScreen: 'Op het beginscherm zetten',
  notNow: 'Nu niet',
  understood: 'Begrepen',

  howToTakeIt: 'Zo doe je het',
  whatItTells: 'Wat het vertelt',
};
