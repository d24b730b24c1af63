/*
 * Words of what is no ware. All look at lower case, without the flags `i` and `u`: with them a browser takes
 * milliseconds to compile each.
 */
const WORD = "a-zà-ž";

/** What is asked of a visitor who is to come, work, give or sign up, in the ten languages of slot words. */
export const CALL =
  /^[^a-zà-ž]*(apply|(re)?book\b|make an? (booking|appointment|reservation)|enrol|register|rsvp|join|sign up|donate|redeem|(start|try) .*(trial|free)|(get|buy|acquista|acheter|comprar|köp|kup) .{0,5}(tickets|bigliett|billet|entradas|biljett|bilet)|tickets? (kaufen|sichern|kopen)|(zum |les |i )?(tickets?|billets?|bilety?|biljetter|biglietti|bilhetes|ingressos|entradas|kaarten)\b|check avail|bewerben|jetzt (buchen|bewerben|anmelden|spenden)|buchen|reserv(?![a-z]* (this |dit |dieses? |este |esta )?(product|produkt|produ[ct]to|art[ií][ck]|item|st[uü]c?k))|anmelden|spenden|einlösen|platz sichern|postuler|réserver(?! (cet? )?(produit|article|objet))|s.inscrire|je (donne|réserve|m.inscris)|faire un don|inscr[ií]|solicitar|postular|donar|prenota|iscriviti|candidat|dona\b|agendar|boek\b|solliciteer|schrijf je|doneer|boka\b|ansök|anmäl|rezerwuj|zarezerwuj|zapisz się|aplikuj|matric[uú]la|wesprzyj|билет|квитк|予約|応募|申し?込|チケット|寄付|забронир|бронир|замовити номер)/;

/** Parts of an address under which no wares lie. */
export const PATH =
  /\/(whats-on|tickets?|jobs?|careers?|vacanc\w+|karriere|stellen\w*|emplois?|courses?|kurse?|cours|cursos?|workshops?|ateliers?|classes|rooms?|zimmer|chambres|habitaciones|camere|kamers|stays?|hotels?|property|properties|immobilien|villas?|tours?|bookings?|apply|donat\w+|donasi|spenden?|give|appeals?|projects?(?!\/[^/]+\/[^/])|repairs?|services?|cartelera|team|stylists?|press[ae]?|prensa|cafes?|restaurants?|bistro|gewinnspiel\w*|(jeu-)?concours|contests?|giveaways?|raffles?|loyalty|rewards?|membership|news|nieuws|tin-?tuc|xem-tin-?tuc|noticias|notizie|actualites|nyheter|aktualnosci|novosti|haberler|berita|recip\w+|rezepte|recettes|recetas|ricette|((restaurant|food|cafe|our)[-_]?)?menus?|speisekarte|shipping|delivery|versand|livraison|envios?|spedizioni|orders?|signup|pricing|plans?|(property|room|course|job|event|tour|hotel|package)[-_]?(details?|single|view|info)\w*)(\/|\.\w+$|$)/;

/** Addresses of scripts that show an event, in lower case. */
export const EVENT_FILE =
  /\/((detail|view|show|single|fiche)s?[-_]?(event|evenement|evento|concert)s?|(event|evenement|evento|concert)s?[-_]?(detail|view|show|single|info)s?)(\.\w+)?\/?$/;

/** Headings of pages that show pictures and amounts and sell nothing; nothing or a binding word follows. */
export const HEADING =
  /^((our|the|your|la|le|il|el|unsere?|nos|nuestr[ao]s|nossos?|onze|våra|nasze) )?(menu|lunch|dinner|brunch|drinks|speisekarte|getränke|carte|carta|meny|meniu|メニュー|careers?|jobs|karriere|stellen[a-zà-ž]*|rooms?|zimmer|chambres|courses?|kurse|cours|cursos|corsi|cursussen|kurser|kursy|events?|veranstaltungen|événements|eventos|eventi|evenementen|evenemang|wydarzenia|what.s on|delivery|shipping|versand[a-zà-ž]*|livraison|envíos?|spedizion[ei]|entregas?|verzending|frakt|dostawa|配送|rewards?|press|presse|prensa|stampa|imprensa|pers|prasa|team|équipe|equipo|squadra|equipe|zespół|stylists?|pricing|plans|tarife?s?|repairs?|reparatur[a-zà-ž]*|services?|orders?|stays?|tickets?|donat[a-zà-ž]+|cartelera|now showing|kinoprogramm|à l.affiche|採用[a-zà-ž]*|送料|аренда (квартир|жиль|дом|комнат)|оренда (квартир|житл|будин|кімнат)|снять квартиру|excursions?|excursiones|escursioni|ausflüge|wycieczki|туры|отели|готелі|экскурсии|екскурсії|(đặt )?tour( du lịch)?|ทัวร์|旅行|여행|투어|paket (wisata|tour)|apartments|properties|flats)([^a-zà-ž]*$|,? (&|and|und|et|y|e|en|och|i|at|with|from|for|bei|chez|in) )/;

/** An amount with its sign or code, as far as the words behind it. */
const AMOUNT = `\\d[^${WORD}\\d]{0,3}(kr|zł|kč|ft|tl|lei|euro?|usd|chf|sek|nok|dkk)?[^${WORD}\\d]{0,8}(\\/ ?|all.|(per|an?|pro|par|por|al|alla|à la|za|i) )`;

/** What a time, a place or work costs is said by the night, the hour, the head or the year. */
export const RATE = new RegExp(
  `${AMOUNT}(night|hour|hr|person|pax|px|orang|guest|head|year|annum|nacht|stunde|jahr|nuit|heure|personne|an|noche|hora|persona|año|notte|ora|anno|noite|pessoa|ano|porción|porzione|porção|portion|serving|portie|punt|persoon|uur|jaar|natt|tim|timme|år|jam|hari|noc|osobę|godzinę|rok|gece|kişi|đêm|người|ночь|ночи|сутки|добу|ніч|чел)(?![${WORD}]{2})|\\bp\\. ?[ap]\\.|\\b(per|pro|par) (night|nacht|nuit|annum)\\b|[円¥\\d] ?/ ?(泊|名|人|時間)|時給|月給|年収|\\d ?\\/ ?\\d{1,2} ?(hours?|stunden|heures|horas|ore|uur|timmar|godzin|jam)(?![${WORD}])`,
);

/** What is sold, whatever else it costs for a while: beside the price to hire it. */
export const FOR_SALE =
  /purchase price|price to buy|kaufpreis|prix d.achat|precio de (compra|venta)|preço de (compra|venda)|prezzo d.acquisto|koopprijs|köppris|købspris|cena zakupu|цена покупки/;

/** Facts of stays, work, appointments (how long one lasts), events, collections and cars. */
export const FACT =
  /\b(bedrooms|\d+[ -]bed(room)?|sleeps \d|\d+ (guests|backers|supporters)|raised (of|so far)|(raised|collectés?|recaudado|arrecadado|gesammelt|raccolti|zebrano):? ?[^a-zà-ž\d\s]{1,3} ?\d[\d.,]*|pledged|(seats|places|tickets) (left|available|remaining)|freie plätze|places (disponibles|restantes)|posti (liberi|disponibili)|plazas (libres|disponibles)|vagas (livres|disponíveis)|wolnych miejsc|alcobas|\d+ (habitaciones|dormitorios|recámaras|quartos|chambres)|\d{2,4} ?cc|(adoption|rehoming) fee|(schutz|adoptions)gebühr|frais d.adoption|(tasa|cuota) de adopción|taxa de adoção|accommodation|alojamiento|hospedaje|hospedagem|hébergement|unterkunft|übernachtung(en)?|estancia en|medlems?skap|mitgliedschaft|kontingent|terkumpul dari|full[- ]time|part[- ]time|vollzeit|teilzeit|temps (plein|partiel)|jornada completa|tempo (pieno|integral)|voltijd|deeltijd|heltid|deltid|pełny etat|(automatic|manual) transmission|vitesses? (auto|manu)\w+|boîte (auto|manu)\w+|(otomatik|manuel) vites|caja (automática|manual)|câmbio (automático|manual)|cambio (automatico|manuale)|(automatik|schalt)getriebe)\b|\b\d{1,2}([:.]\d\d)? ?([ap]\.?m\b|uhr\b)|\d[.,\d ]{3,} km\b|\d ?(m²|m2\b|sq ?ft|кв\.? ?м|м\.? ?кв)|спальных мест|за сутки|^ *\d{1,2}([.,]\d)? ?(hours?|hrs?|std\.?|stunden?|heures?|horas?|or[ea]|uur|tim(mar)?|timer|godz[a-zà-ž.]*|saat|hodin[a-zà-ž]*|óra|tuntia|годин[а-я]*|час(а|ов)?|שעות|ساع(ة|ات)|時間|시간) *$|(\b([01]?\d|2[0-3]):[0-5]\d\b(?!:)[^:]*){2}|свободных мест|taksit (seçenek|sayısı)|instal?lment (options|plan)|opções de parcelamento|διανυκτ[εέ]ρ|διαμονή|\d ?วัน ?\d ?คืน|\d ?-?комн(\.|ат)|комнат\s*\d|mã tour|\d+ ngày \d+ đêm|^(belépő|belépőjegy|vstupné|eintritt|ingresso|entrée|entrada|wstęp|вход|billett?)\s*:|(?:jegy|billett?|ticket):|\d박|왕복|\d泊|\d ?(night|nacht|nuit|noche|notte|noite|ночей|ноч[иь])(e?s|i|s|n)?\b.{0,12}\d ?(day|tag|jour|d[ií]a|giorn)|正社員|アルバイト|^([^\d,\n]+, )?\d{1,2}[./]\d{1,2}[./](20)?\d\d$/m;

/** What the page of those who sell or hire out cars, or let and sell houses, is called, somewhere in its title. */
export const HIRE =
  /real estate|autohaus|autobedrij[fv]|gebrauchtwagen|autokomis|autohandel|bilhandel|brugte biler|begagnade bilar|concession(n?aire|[aá]ri[ao])s? (d.)?auto|voitures d.occasion|auto usate|coches (de segunda mano|usados)|carros usados|(car|auto) (dealer|leasing)|(private|auto)[ -]?lease\b|lease aanbod|used cars|автосалон|中古車|중고차|二手车|\bhotels?\b|hôtel|hostel|\balbergo\b|хотел|отел[ья]|гостиниц|готел|посуточно|\bemlak|immobili|imobili[áa]ri|inmobiliari|nieruchomości|makelaar|mäklare|недвижимост|нерухоміст|不動産|부동산|房地产|bất động sản|(car|scooter|boat) (hire|rental)|rent[- ]?a[- ]?car|location (de )?(voiture|scooter)|autovermiet|mietwagen|inmuebles|alquiler de (coche|auto|carro|veh[ií]culo)|autonoleggio|noleggio auto|alugue[lr] de (carro|ve[ií]culo)|ara(ç|ba) kiral|oto kiral|wypożyczalnia (samochod|aut)|autoverhuur|biluthyr|biludlej|autopůjčovn|прокат авто|аренда авто|レンタカー|렌[터트]카|租车|租車|thuê xe|(sewa|rental) mobil|تأجير (ال)?سيار|(travel|tour) (agency|operator)|reisebüro|agen[cz]ia (de |di )?(viajes|viagens|viaggi)|agence de voyages?|biuro podróży|турагент|туроператор|seyahat acent|du lịch|여행사|旅行社|ทัวร์|paket (wisata|tour)/;

/** What houses are called that serve food, somewhere in their pages' titles. */
export const HOUSE =
  /^carta (bar|del?|restaurante)\b|restaura(nt|ce|cja|ção)|ristorante|restoran|pizz?[eé]ri[ae]|trattoria|osteria|bistro|brasserie|gasth(aus|of)|taverna|steakhouse|ресторан|レストラン|食堂|식당|餐厅|餐廳|nhà hàng|مطعم|מסעד/;

/** Headings of what a menu is divided into. */
export const COURSES =
  /^((cold|hot|our) )?(tapas( (y|&) raciones)?|raciones|appetizers?|starters|main (courses?|dishes)|mains|side dishes|sides|desserts?|drinks|vorspeisen?|hauptgerichte?|hauptspeisen?|nachspeisen?|getränke|antipasti|primi( piatti)?|secondi( piatti)?|contorni|dolci|entrées|plats|boissons|entrantes|postres|bebidas|voorgerechten|hoofdgerechten|nagerechten|förrätter|varmrätter|efterrätter|przystawki|dania główne|desery|předkrmy|hlavní jídla|закуски|горячие блюда|десерты)[^a-zà-ž]*$/;

/** A line that is no more than a number of points: what is paid with those that a shop gives, where nothing leads to it. */
export const POINTS = /^\d[\d., ]* ?(points|pts|pkt|punkt(e|ów|er)|puntos|punti|pontos|punten|poäng)\.?$/m;

/** What is paid by the month; clothes are too, where their picture leads to them. */
export const MONTHLY = new RegExp(
  `${AMOUNT}(mo|month|monat|mois|mes|mese|mês|maand|mån|månad|mnd|måned|miesiąc|mies)(?![${WORD}]{2})|月額|(per|al|par|por|pro|i) (month|mese|mois|mes|mês|monat|maand|månad) ?:|цена в месяц`,
);

/** Names of vouchers, which have a picture and an amount and no colour of their own. */
export const VOUCHER =
  /(^|[^a-zà-ž])(mã giảm giá|phiếu (quà tặng|giảm giá)|thẻ quà tặng|(e-?)?gift ?(cards?|vouchers?|certificates?)|(geschenk|wert)?gutscheine?|geschenkkarten?|(carte|chèque|bon)s?[- ]cadeaux?|tarjetas?( de)? regalo|carta regalo|buon[oi] regalo|cart(ão|ões)[- ](presente|oferta)|vale[- ]presente|cadeau(bon|kaart)(nen)?|presentkort|gavekort|lahjakort(ti|it)|karta (podarunkowa|prezentowa)|bon podarunkowy|dárkov(á karta|ý poukaz)|darčekov(á karta|ý poukaz)|ajándék(kártya|utalvány)|hediye (kartı|çeki)|card cadou|e-?card)([^a-zà-ž]|$)|подарочн(ая|ый) (карта|сертификат)|подарункова карт|подарунковий сертифікат|δωρο(κάρτα|επιταγή)|ギフト(カード|券)|商品券|기프트 ?카드|상품권|礼品卡|禮(品|物)卡|بطاقة (هدية|هدايا)|قسيمة|שובר|גיפט ?קארד|כרטיס מתנה|บัตรของขวัญ/;
