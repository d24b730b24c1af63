/**
 * What lies on pictures of wares and is no name, as a whole text in lower case: free shipping, paid for, new, on sale, few
 * left. In the ten languages of slot words and some more; without the flags `i` and `u`, with which a browser takes
 * milliseconds to compile it.
 */
const STICKER =
  /^(best price|bester preis|meilleur prix|mejor precio|melhor preço|miglior prezzo|лучшая цена|[أا]فضل سعر|free (shipping|delivery|returns)|ships free|sponsored|promoted|ad|new( in| arrival| season)?|just in|limited( edition)?|online (only|exclusive)|exclusive|best ?sellers?|top ?seller|trending|staff pick|last (one|chance|pieces|units|sizes)|almost gone|low stock|only \d+ left|back in stock|clearance|outlet|promo|(gratis ?|kostenloser )versand|versandkostenfrei|anzeige|gesponsert|werbung|nur noch \d+.*|bestseller|neuheit|(stark )?reduziert|letzte (stücke|chance)|nachhaltig|livraison (gratuite|offerte)|sponsorisé|publicité|nouveauté|meilleure vente|dernières? pièces?|exclusivité( web)?|édition limitée|soldes|envío gratis|patrocinado|publicidade?|novedad(es)?|más vendido|últimas (unidades|peças)|edición limitada|rebajas?|frete grátis|envio gr[áa]tis|mais vendido|novidade|lançamento|edição limitada|promoç(ão|ões)|promoción|spedizione gratuita|sponsorizzato|novità|più venduto|ultimi pezzi|edizione limitata|saldi|offerta|gratis (verzending|bezorgd)|gesponsord|advertentie|nieuw|laatste stuks|uitverkoop|aanbieding|fri (frakt|fragt|levering)|sponsrad|annons|nyhet(er)?|nyhed|storsäljare|rea|udsalg|salg|tilbud|sista chansen|darmowa dostawa|sponsorowane|reklam[ay]?|nowość|nowości|ostatnie sztuki|wyprzedaż|promocja|okazja|(kargo|kargonuz) bedava|ücretsiz kargo|(en )?çok satan|yeni( ürün)?|son \d+ ürün|tükeniyor|fırsat|indirim|kampanya|doprava zdarma|novinka|výprodej|akce|ingyenes szállítás|újdonság|akció|hirdetés|ilmainen toimitus|uutuus|ale|livrare gratuită|nou(tăți)?|reducere|бесплатная доставка|безкоштовна доставка|реклама|новинка|хит( продаж)?|распродажа|скидка|знижка|νέο|δωρεάν μεταφορικά|προσφορά|διαφήμιση|送料無料|広告|pr|新(作|着|商品)|限定|再入荷|人気|セール|残りわずか|무료 ?배송|광고|신상(품)?|세일|한정|包邮|免運|新品|热卖|热销|廣告|广告|إعلان|جديد|شحن مجاني|توصيل مجاني|الأكثر (طلبًا|مبيعًا)|خصم|ממומן|חדש|משלוח חינם|מבצע|ส่งฟรี|ใหม่|miễn phí vận chuyển|mới|gratis ongkir|baru)[^a-zà-ž]*$/;

/** Characters of the longest. */
const LONGEST = 28;

/** Whether a text is what a badge says and no name. */
export const isSticker = (text: string): boolean =>
  text.length <= LONGEST && STICKER.test(text.toLowerCase());
