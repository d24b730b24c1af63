/**
 * Pictures without a person, one rule a line; `count` pictures are taken, going round the lists.
 * kind | count | pose | dyes | cuts | settings | near (darkness of shadows on the backdrop)
 * dyes: wheel, whites, metals, or `print`, where the print comes with its dyes.
 */
export const THINGS_TABLE = `
cut-out | 26 | ghost | wheel | tee wrap-dress straight-trousers jacket jumper pleated-skirt shirt slip-dress coat shorts | white | 0
cut-out | 10 | still | wheel | trainer saddle-bag court-shoe tote ankle-boot ballerina | white paper | 0.5
white-on-white | 20 | ghost | whites | shirt tee blouse jumper wide-trousers slip-dress cardigan longsleeve a-line-skirt vest | white paper mist white | 0.3
white-on-white | 8 | still | whites | trainer tote court-shoe saddle-bag | white mist paper | 0.6
coloured-studio | 18 | ghost | wheel | tee flare-dress jumper shorts blouse coat a-line-skirt rollneck | rose sage ochre azure terracotta lime ultramarine crimson | 0.4
coloured-studio | 10 | still | wheel | saddle-bag trainer tote court-shoe ankle-boot | lime terracotta azure crimson rose ochre | 0.8
gradient-studio | 18 | hanger | wheel | blazer shirt jumper straight-trousers camisole jacket maxi-dress pencil-skirt | dusk storm spot glow fade | 0.5
gradient-studio | 8 | still | wheel | tote ankle-boot trainer saddle-bag ballerina | spot storm dusk fade glow | 0.8
ghost | 26 | ghost | wheel | blazer cardigan shirt-dress jacket tee coat knit-dress blouse jumpsuit shorts | paper mist grey | 0.2
flat-lay | 28 | flat | wheel | jumper jeans tee shirt jacket shorts cardigan wide-trousers longsleeve | oak sheet walnut tiles ash rug carpet denimBlanket blanket | 1
small-goods | 26 | small | wheel | trainer court-shoe saddle-bag ballerina ankle-boot tote | mist rose grey sage ash fade terracotta | 1
soft-shadow | 24 | still | wheel | trainer tote ballerina saddle-bag ankle-boot court-shoe | mist paper grey fade | 0.9
prints | 12 | ghost | print | shirt flare-dress blouse tee-dress pleated-skirt camisole | white mist paper grey | 0.3
prints | 8 | flat | print | shirt blouse jumper tee | ash sheet oak tiles | 1
stickers | 8 | ghost | wheel | tee jacket shirt-dress straight-trousers | white mist paper rose | 0.3
several-views | 6 | several | wheel | blouse coat jeans jumper flare-dress jacket | white mist paper | 0.2
metallic | 6 | still | metals | court-shoe saddle-bag ballerina trainer ankle-boot tote | white mist storm | 0.6
`;

/** Prints and their dyes, ground first. */
export const PRINT_CLOTHS = `
floral ivory fuchsia forest
stripes white navy
dots scarlet white
check camel burgundy ivory
gingham white cobalt sky
floral black coral butter forest
stripes mustard navy ivory
dots navy blush
floral sky scarlet butter forest
stripes emerald white
check charcoal scarlet ivory
dots ivory black
`;
