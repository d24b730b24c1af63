/**
 * The stock of the invented store, one product a line:
 * title | cut | weave print | dyes, ground first | price, was | pose backdrop skin | more colours | more scenes
 * More colours replace the whole cloth; each is photographed in the first scene.
 */
export const CATALOGUE_TABLE = `
Marla wrap dress in cobalt | wrap-dress | smooth plain | cobalt | 89 | model white 4 | emerald, fuchsia | hanger plaster
Meadowsweet floral midi dress | flare-dress | smooth floral | navy blush mint butter | 95 | model sage 2 | |
Pleated midi skirt in scarlet | pleated-skirt | smooth plain | scarlet | 69 | model white 5 | emerald, camel, lilac | ghost white
Breton striped top | longsleeve | smooth stripes | ivory navy | 39 | ghost white | |
Rosewood Lane coat | coat | wool plain | forest | 189 149 | model white 6 | | hanger plaster
Linnet shirt dress, mustard | shirt-dress | smooth plain | mustard | 85 | model grey 7 | teal |
Silk blouse in tangerine | blouse | satin plain | tangerine | 75 | model white 1 | lilac, ivory | ghost white
Suede court shoes | court-shoe | leather plain | emerald | 98 | still white | fuchsia, black |
Double-breasted blazer in camel | blazer | wool plain | camel | 139 | model fade 3 | navy, blush |
Fuchsia satin slip dress | slip-dress | satin plain | fuchsia | 110 79 | model white 9 | | hanger plaster
Straight-leg jeans | jeans | denim plain | denim | 65 | model white 4 | indigo, black | flat ash
Chunky cable jumper, mustard | jumper | knit plain | mustard | 72 | flat oak | teal |
Saddle bag in tangerine leather | saddle-bag | leather plain | tangerine | 119 | still white | cobalt |
Organic cotton T-shirt | tee | smooth plain | scarlet | 24 | ghost white | white, black, cobalt | model white 8
Emerald fit-and-flare dress | flare-dress | smooth plain | emerald | 92 | model rose 6 | |
Lilac merino cardigan | cardigan | knit plain | lilac | 68 | hanger plaster | mustard | model grey 2
A-line wool skirt, Hazel check | a-line-skirt | wool check | camel burgundy ivory | 74 | ghost grey | |
Wool beret | beret | wool plain | fuchsia | 29 | model fade 7 | navy |
Polka dot tea dress | flare-dress | smooth dots | scarlet white | 88 62 | model azure 3 | |
Wide-leg trousers in emerald | wide-trousers | smooth plain | emerald | 79 | model white 8 | cobalt |
Canvas trainers, scarlet | trainer | smooth plain | scarlet | 55 | still oak | white |
Fine-knit roll neck in teal | rollneck | knit plain | teal | 58 | model dusk 6 | |
Cropped denim jacket | jacket | denim plain | denim | 82 | flat oak | |
Opaque tights, 60 denier | tights | smooth plain | burgundy | 14 | model white 2 | black, teal |
Harbour jumpsuit | jumpsuit | smooth plain | navy | 105 | model white 10 | |
Meadow print blouse | blouse | smooth floral | ivory fuchsia forest | 64 | hanger plaster | |
Leather ankle boots | ankle-boot | leather plain | chocolate | 135 | still fade | black |
Cobalt wool coat | coat | wool plain | cobalt | 210 | model grey 7 | |
Silk scarf, Orchard print | scarf | satin floral | violet mustard blush | 35 | flat walnut | |
Pencil skirt in fuchsia | pencil-skirt | smooth plain | fuchsia | 49 | model white 10 | | ghost white
Gingham shirt | shirt | smooth gingham | white cobalt sky | 52 | flat walnut | |
Lilac knit dress | knit-dress | knit plain | lilac | 84 | model fade 5 | |
Everyday tote | tote | leather plain | teal | 89 59 | still white | black |
Tailored trousers, black | straight-trousers | wool plain | black | 72 | ghost white | charcoal | model room 3
Scarlet blazer | blazer | smooth plain | scarlet | 129 | model azure 9 | |
Rosehip maxi dress | maxi-dress | smooth plain | teal | 99 | model ochre 8 | |
Linen shorts in sky blue | shorts | smooth plain | sky | 42 | model white 2 | |
Bead necklace, turquoise | beads | smooth plain | turquoise | 32 | model white 4 | |
Striped jersey T-shirt dress | tee-dress | smooth stripes | white navy scarlet | 56 | hanger plaster | |
Cobalt ballet flats | ballerina | leather plain | cobalt | 62 | still white | |
Satin midi skirt, tangerine | a-line-skirt | satin plain | tangerine | 66 | hanger plaster | |
Olive field jacket | jacket | smooth plain | olive | 115 | model room 5 | |
Peach cotton camisole | camisole | smooth plain | peach | 28 | model white 10 | mint |
Plum corduroy trousers | straight-trousers | wool plain | plum | 69 48 | flat ash | |
Heritage checked coat | coat | wool check | camel black ivory | 229 | model room 1 | |
Ribbed vest top | vest | knit plain | black | 26 | model terracotta 5 | white |
Merino ankle socks | socks | knit stripes | mustard plum | 12 | flat oak | |
Leather belt, rust | belt | leather plain | rust | 34 | flat ash | |
`;
