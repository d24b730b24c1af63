/**
 * Pictures of people, one scene a line; each is taken with all ten skin tones.
 * kind | cut, weave, print, dyes | finish | worn with, cut:colour | top and bottom of the frame, width:height | setting | hair style
 */
export const PEOPLE_TABLE = `
model | wrap-dress smooth plain cobalt | | | -34 1000 0.75 | white | long
model | blouse satin plain emerald | | straight-trousers:#26262a | -40 640 0.75 | mist | bun
model | straight-trousers smooth plain stone | | vest:#efeeea | 290 1020 0.75 | grey | bob
model | jacket denim plain denim | | vest:#efeeea straight-trousers:#55565a | -40 700 0.8 | fade | short
model | jumper knit plain navy | | jeans:#7d87a8 graphic:#d3a53a | -40 640 0.8 | azure | bob
model | tee smooth plain white | | jeans:#3a4a66 graphic:#2f5d50 | -30 610 0.75 | mist | long
among-others | a-line-skirt smooth plain mustard | | tee:#2f5d50 cardigan:#8b2f3a | -34 1000 0.67 | mist | bob
among-others | tee smooth plain coral | | jeans:#3a4a66 blazer:#26262a | -40 700 0.67 | white | long
among-others | jeans denim plain indigo | | jumper:#c96f4a | -34 1000 0.67 | grey | bun
among-others | coat wool plain teal | | rollneck:#d3a53a straight-trousers:#8b2f3a | -34 1000 0.67 | fade | short
among-others | cardigan knit plain lilac | | vest:#26262a pleated-skirt:#2f5d50 | -40 860 0.67 | paper | long
among-others | shorts smooth plain scarlet | | shirt:#7d87a8 crossbody:#6b4a2e | -34 900 0.67 | white | bob
skin-like | slip-dress satin plain blush | | | -34 1000 0.75 | mist | bun
skin-like | vest knit plain beige | | jeans:#3a4a66 | -40 620 0.75 | white | short
skin-like | blazer wool plain camel | | vest:#efeeea straight-trousers:#26262a | -40 740 0.75 | grey | long
skin-like | tee-dress smooth plain chocolate | | | -34 960 0.75 | paper | bob
skin-like | shorts smooth plain tan | | camisole:#efeeea | 140 860 0.7 | fade | long
skin-like | longsleeve smooth plain ivory | | pencil-skirt:#55565a | -40 640 0.75 | rose | bun
much-skin | camisole satin plain sky | | shorts:#efeeea | -50 560 0.8 | mist | bun
much-skin | shorts denim plain denim | | camisole:#26262a | 250 1030 0.7 | white | short
much-skin | camisole smooth plain black | | jeans:#7d87a8 | -30 400 0.8 | grey | short
much-skin | slip-dress satin plain rose | | | -30 470 0.8 | paper | bun
much-skin | beanie knit plain rust | | rollneck:#26262a | -60 230 0.8 | mist | bob
hair | rollneck knit plain charcoal | | straight-trousers:#cfc4b2 | -50 460 0.8 | mist | long
hair | longsleeve smooth plain rust | | jeans:#3a4a66 | -50 400 0.75 | white | long
hair | camisole satin plain plum | | jeans:#7d87a8 | -50 520 0.75 | grey | long
hair | flare-dress smooth plain butter | | | -50 700 0.75 | sage | long
outdoor | flare-dress smooth plain tangerine | | | -60 1040 0.67 | street | long
outdoor | coat wool plain forest | | rollneck:#efeeea jeans:#3a4a66 | -60 1000 0.75 | garden | bun
outdoor | maxi-dress smooth plain turquoise | | | -60 1060 0.67 | beach | bob
outdoor | jumper knit plain violet | | jeans:#3a4a66 crossbody:#26262a | -60 700 0.8 | brick | short
outdoor | jacket smooth plain olive | | tee:#efeeea straight-trousers:#cfc4b2 | -60 840 0.75 | street | bob
outdoor | shirt smooth plain white | | straight-trousers:#3a4a66 | -60 900 0.75 | garden | long
close-up | jumper knit plain rose | | jeans:#3a4a66 | 170 420 0.75 | mist | short
close-up | blazer wool plain burgundy | | vest:#efeeea straight-trousers:#26262a | 160 440 0.8 | grey | bun
close-up | straight-trousers smooth plain sky | | tee:#efeeea | 370 640 0.75 | white | short
close-up | camisole satin plain ivory | | jeans:#3a4a66 | 150 420 0.8 | mist | short
lace | flare-dress smooth plain black | lace | | -34 860 0.75 | mist | bun
lace | longsleeve smooth plain white | lace | jeans:#3a4a66 | -40 620 0.75 | grey | bob
lace | blouse smooth plain burgundy | lace | pencil-skirt:#26262a | -40 620 0.75 | white | short
sequins | tee-dress smooth plain fuchsia | sequin | | -34 960 0.75 | mist | short
sequins | flare-dress smooth plain camel | sequin | | -34 860 0.75 | storm | bun
sequins | vest smooth plain silver | sequin | straight-trousers:#26262a | -40 620 0.75 | white | bob
metallic | a-line-skirt satin plain gold | metal | vest:#26262a | 240 1000 0.75 | paper | bob
metallic | blazer satin plain silver | metal | vest:#26262a straight-trousers:#26262a | -40 740 0.75 | mist | short
mesh | longsleeve smooth plain forest | mesh | pencil-skirt:#26262a | -40 620 0.75 | fade | bun
mesh | flare-dress smooth plain lilac | mesh | | -34 860 0.75 | white | short
mesh | blouse smooth plain black | mesh | jeans:#7d87a8 | -40 620 0.75 | mist | long
several-views | tee smooth plain mint | | jeans:#3a4a66 | -40 760 0.5 | mist | long
several-views | shirt-dress smooth plain navy | | | -34 1000 0.5 | white | bob
prints | flare-dress smooth floral navy blush mint butter | | | -34 900 0.75 | mist | bun
prints | shirt smooth check camel burgundy ivory | | jeans:#3a4a66 | -40 640 0.75 | grey | short
prints | tee-dress smooth stripes white navy scarlet | | | -34 960 0.75 | paper | long
stickers | tee smooth plain grey | | straight-trousers:#26262a | -40 640 0.75 | mist | bob
stickers | pencil-skirt smooth plain peach | | vest:#26262a | 250 900 0.75 | white | long
`;
