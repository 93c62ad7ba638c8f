/** One line of JSON for each line of the contract. Written by `npx tsx scripts/api-examples.ts`; not to be edited. */
export const API_EXAMPLES: Readonly<Record<string, string>> = {
  addChild:
    '{"body":{"name":"Mira Solberg","born":"2017-03-14","sex":"female","number":"17"},"status":201,"type":"application/json","answer":{"child":{"id":"00000000-0000-4000-8000-000000000003","name":"Mira Solberg","number":"17","born":"2017-03-14","sex":"female"},"course":{"lengthwise":1,"child":{"id":"00000000-0000-4000-8000-000000000003","born":"2017-03-14","sex":"female"},"practice":{"latitude":51.5},"visits":[],"treatments":[],"supplies":[],"consents":[]},"entries":[{"id":"00000000-0000-4000-8000-000000000003","kind":"child","body":{"born":"2017-03-14","name":"Mira Solberg","number":"17","sex":"female"},"date":"2017-03-14","author":"Ada Lindqvist","recordedAt":"2025-11-25T09:00:00.000Z","supersedes":null,"supersededBy":null,"reason":null}]}}',
  addConcern:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"opened":"2025-11-20","kind":"light-sensitivity","what":"bright light outdoors"},"status":201,"type":"application/json"}',
  addConsent:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"date":"2025-11-03","covers":{"kind":"atropine","concentrationPercent":0.05},"by":{"relation":"mother"},"assent":"given"},"status":201,"type":"application/json"}',
  addDecision:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"date":"2025-11-20","kind":"continue","reason":"too early to tell"},"status":201,"type":"application/json"}',
  addExplanation:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"date":"2025-11-20"},"status":201,"type":"application/json"}',
  addFamilyLink:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"language":"en","days":90},"status":201,"type":"application/json","answer":{"links":[{"id":"example-10xxxxxxxxxxxx","path":"/f/example-11xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx","url":"http://localhost:80/f/example-11xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx","language":"en","createdAt":"2025-11-25T09:00:00.000Z","createdBy":"Ada Lindqvist","expiresAt":"2026-02-23T09:00:00.000Z","state":"open","openedCount":0,"lastOpenedAt":null}]}}',
  addFile:
    '{"query":{"mediaType":"text/plain"},"status":201,"type":"application/json","answer":{"sha256":"000000000000000000000000000000000000000000000000000000000000000c","bytes":22}}',
  addGlasses:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":[{"date":"2023-09-01","right":{"sphere":-1},"left":{"sphere":-1.25}},{"date":"2024-09-02","right":{"sphere":-1.5},"left":{"sphere":-1.75}}],"status":201,"type":"application/json"}',
  addMissedNights:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"from":"2025-11-10","to":"2025-11-12","nights":2},"status":201,"type":"application/json"}',
  addOrder:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"date":"2025-11-20","concentrationPercent":0.05,"bottles":3,"volumeMl":5},"status":201,"type":"application/json"}',
  addPayment:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"date":"2025-11-20","cents":4000,"currency":"EUR"},"status":201,"type":"application/json"}',
  addSupply:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"dispensed":"2025-11-04","opened":"2025-11-04","concentrationPercent":0.05,"volumeMl":5,"beyondUse":"2025-12-04","lot":"LT-07"},"status":201,"type":"application/json"}',
  addToken:
    '{"body":{"name":"scheduling","scopes":["read","write"],"days":365},"status":201,"type":"application/json","answer":{"tokens":[{"id":"00000000-0000-4000-8000-000000000016","name":"scheduling","ending":"7Qx2","scopes":["read"],"createdAt":"2025-11-25T09:00:00.000Z","createdBy":"Ada Lindqvist","expiresAt":"2026-11-25T09:00:00.000Z","lastUsedAt":null,"revokedAt":null,"revokedBy":null,"state":"open"}],"secret":"(secret)"}}',
  addVisit:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"date":"2025-11-03","right":{"axialLength":{"mm":24.12,"readings":5,"method":"optical-biometry","device":"A"},"refraction":{"sphere":-2.25,"cylinder":-0.5,"axis":180,"cycloplegic":true,"method":"autorefraction"}},"left":{"axialLength":{"mm":24.2,"readings":5,"method":"optical-biometry","device":"A"},"refraction":{"sphere":-2.25,"cylinder":-0.5,"axis":180,"cycloplegic":true,"method":"autorefraction"}}},"status":201,"type":"application/json"}',
  addWebhook:
    '{"body":{"url":"http://localhost:9/news","events":["finding-new","duty-open","object-waiting"]},"status":201,"type":"application/json","answer":{"webhooks":[{"id":"00000000-0000-4000-8000-000000000017","url":"http://localhost:9/news","events":["finding-new"],"state":"on","failures":0,"pausedUntil":null,"createdAt":"2025-11-25T09:00:00.000Z","createdBy":"Ada Lindqvist","changedAt":"2025-11-25T09:00:00.000Z","changedBy":"Ada Lindqvist","waiting":0,"delivered":0,"failed":0}],"secret":"(secret)"}}',
  adverseEvents:
    '{"status":200,"type":"application/json","answer":{"from":null,"to":null,"children":1,"events":[]}}',
  amendEntry:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003","entryId":"00000000-0000-4000-8000-000000000005"},"body":{"fields":{"date":"2025-11-20","concentrationPercent":0.05,"bottles":3,"volumeMl":5,"confirmed":"2025-11-21"},"reason":"confirmed by the pharmacy"},"status":201,"type":"application/json"}',
  archiveFile: '{"params":{"archiveId":"00000000-0000-4000-8000-000000000014"},"status":0}',
  archives: '{"status":200,"type":"application/json","answer":{"archives":[]}}',
  assessment:
    '{"query":{"asOf":"2025-11-25"},"params":{"id":"00000000-0000-4000-8000-000000000003"},"status":200,"type":"application/json","answer":{"asOf":"2025-11-25","ageYears":8.700889801505818,"method":{"version":"1.1.0","parameters":"growth-2026-11-25"},"eyes":{"right":{"length":{"mm":24.150000311954415,"low95":24.10839143638326,"high95":24.191609187525568},"rate":null,"natural":null,"emmetropic":null,"detectableChangeMm":0.05884493216582035,"position":{"refused":"no length reference is chosen while the child\'s ancestry is unstated; state it, or name a reference"}},"left":{"length":{"mm":24.200000255748705,"low95":24.158391380181268,"high95":24.241609131316142},"rate":null,"natural":null,"emmetropic":null,"detectableChangeMm":0.05884493216582035,"position":{"refused":"no length reference is chosen while the child\'s ancestry is unstated; state it, or name a reference"}}},"finding":{"state":"cannot-tell-yet","treatment":"atropine 0.025 %","likelihoodRatio":1,"lean":null,"upper":9,"lower":0.11111111111111112,"reasons":["only one length has been measured"],"earliestAnswer":null},"growth":{"state":"unclear","probabilities":null,"mmPerYear":null,"reasons":["there are not yet two lengths of the same eye to tell growth from"]},"chances":[{"review":"2026-05-24","step":"check 6 months after the stop","ifItWorks":0,"ifNot":0}],"concerns":[],"checks":[{"kind":"ancestry-unstated","path":"child.ancestry","why":"ancestry is not stated: natural growth is that of children who are not East Asian, which is the slower one"}],"beliefs":[{"what":"pace, multiple of natural growth","prior":{"mean":1,"sd":0.31759903243611604},"posterior":{"mean":0.9009844610836947,"sd":0.20442541020429955}}],"afterStop":{"state":"cannot-tell-yet","likelihoodRatio":null,"growthMm":null,"naturalMm":null,"why":"no length has been measured since the stop on 2025-11-24"}}}',
  calendar:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"status":200,"type":"text/calendar","answer":"BEGIN:VCALENDAR\\r\\nVERSION:2.0\\r\\nPRODID:-//Lengthwise//Calendar//EN\\r\\nMETHOD:PUBLISH\\r\\nNAME:Reminders\\r\\nX-WR-CALNAME:Reminders\\r\\nBEGIN:VEVENT\\r\\nUID:00000000-0000-4000-8000-000000000009\\r\\nSEQUENCE:20417\\r\\nDTSTAMP:20251125T000000Z\\r\\nDTSTART;VALUE=DATE:20260524\\r\\nX-MICROSOFT-CDO-ALLDAYEVENT:TRUE\\r\\nX-MICROSOFT-MSNCA …"}',
  cancelImport: '{"params":{"id":"00000000-0000-4000-8000-000000000013"},"status":0}',
  cancelMessage:
    '{"params":{"messageId":"00000000-0000-4000-8000-000000000021"},"status":201,"type":"application/json"}',
  changePassword: '{"body":{"current":"(current)","next":"(next)"},"status":204}',
  changeTreatment:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003","entryId":"00000000-0000-4000-8000-000000000006"},"body":{"to":"2025-11-22","kind":"atropine","concentrationPercent":0.025,"reason":"light sensitivity"},"status":201,"type":"application/json"}',
  checkImport:
    '{"params":{"id":"00000000-0000-4000-8000-000000000013"},"body":{"mapping":{"id":"guess","title":"lengths.csv","rowIs":"visit","dateOrder":"year-month-day","decimalSign":".","columns":[{"heading":"name","field":"name"},{"heading":"born","field":"born"},{"heading":"sex","field":"sex"},{"heading":"date","field":"date"},{"heading":"right length","field":"right.axialLengthMm"},{"heading":"left length","field":"left.axialLengthMm"}]},"settled":[]},"status":201,"type":"application/json"}',
  child: '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"status":200,"type":"application/json"}',
  children:
    '{"status":200,"type":"application/json","answer":{"total":1,"page":1,"pageSize":50,"children":[{"id":"00000000-0000-4000-8000-000000000003","name":"Mira Solberg","number":"18","born":"2017-03-14","sex":"female","lastVisit":"2025-11-03","ageYears":8.700889801505818,"growth":{"state":"unclear","mmPerYear":null},"finding":{"state":"cannot-tell-yet"},"nextDuty":{"step":"check 6 months after the stop","due":"2026-05-24","state":"upcoming"},"treatment":null}]}}',
  correctChild:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"child":{"name":"Mira Solberg","born":"2017-03-14","sex":"female","number":"18"},"reason":"number changed"},"status":201,"type":"application/json"}',
  correctVisit:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003","entryId":"00000000-0000-4000-8000-000000000004"},"body":{"visit":{"date":"2025-11-03","right":{"axialLength":{"mm":24.15,"readings":5,"method":"optical-biometry","device":"A"},"refraction":{"sphere":-2.25,"cylinder":-0.5,"axis":180,"cycloplegic":true,"method":"autorefraction"}},"left":{"axialLength":{"mm":24.2,"readings":5,"method":"optical-biometry","device":"A"},"refraction":{"sphere":-2.25,"cylinder":-0.5,"axis":180,"cycloplegic":true,"method":"autorefraction"}}},"reason":"misread"},"status":201,"type":"application/json"}',
  decide:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"date":"2025-11-25","kind":"continue","reason":"growth is watched","treatments":[]},"status":201,"type":"application/json"}',
  deliverAgain:
    '{"params":{"deliveryId":"00000000-0000-4000-8000-000000000018"},"status":201,"type":"application/json","answer":{"total":1,"page":1,"pageSize":50,"deliveries":[{"id":"00000000-0000-4000-8000-000000000018","event":"duty-open","state":"waiting","attempts":0,"nextAttemptAt":null,"status":null,"problem":"again","createdAt":"2025-11-25T09:00:00.000Z","changedAt":"2025-11-25T09:00:00.000Z","url":"http://localhost:9/news","child":{"id":"00000000-0000-4000-8000-000000000003","name":"Mira Solberg"},"changedBy":"Ada Lindqvist"}]}}',
  deliveries: '{"status":200,"type":"application/json"}',
  discardImport: '{"params":{"id":"00000000-0000-4000-8000-000000000013"},"status":0}',
  document:
    '{"query":{"language":"en"},"params":{"id":"00000000-0000-4000-8000-000000000003","kind":"family"},"status":200,"type":"application/json","answer":{"kind":"family","title":"How Mira Solberg\'s eyes are doing","language":"en","date":"2025-11-25","blocks":[{"kind":"lead","text":"We have measured Mira Solberg\'s eyes once, so we cannot say yet how fast they grow."}],"foot":"This page helps you to talk with your eye doctor. It does not replace an examination, and it is not a medical device.","signatureHead":["Name"],"letterhead":{"practice":"Quiet Harbour","lines":[]}}}',
  documentBatch:
    '{"body":{"children":["00000000-0000-4000-8000-000000000003"],"kind":"family","language":"en"},"status":200,"type":"application/pdf"}',
  endTreatment:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003","entryId":"00000000-0000-4000-8000-000000000007"},"body":{"to":"2025-11-24","reason":"family\'s wish"},"status":201,"type":"application/json"}',
  familyLinks:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"status":200,"type":"application/json"}',
  file: '{"params":{"sha256":"000000000000000000000000000000000000000000000000000000000000000c"},"status":200,"type":"text/plain"}',
  handOverMessages:
    '{"body":{"channel":"sms"},"status":201,"type":"application/json","answer":{"list":"00000000-0000-4000-8000-000000000024","count":1}}',
  health: '{"status":200,"type":"application/json","answer":{"status":"ok"}}',
  importAtWork:
    '{"params":{"id":"00000000-0000-4000-8000-000000000013"},"status":200,"type":"application/json"}',
  importProblems: '{"params":{"id":"00000000-0000-4000-8000-000000000013"},"status":0}',
  importQuestions:
    '{"params":{"id":"00000000-0000-4000-8000-000000000013"},"body":{"mapping":{"id":"guess","title":"lengths.csv","rowIs":"visit","dateOrder":"year-month-day","decimalSign":".","columns":[{"heading":"name","field":"name"},{"heading":"born","field":"born"},{"heading":"sex","field":"sex"},{"heading":"date","field":"date"},{"heading":"right length","field":"right.axialLengthMm"},{"heading":"left length","field":"left.axialLengthMm"}]}},"status":201,"type":"application/json","answer":{"questions":[]}}',
  importUndoing: '{"params":{"id":"00000000-0000-4000-8000-000000000013"},"status":0}',
  imports:
    '{"status":200,"type":"application/json","answer":{"total":0,"page":1,"pageSize":20,"imports":[],"atWork":null}}',
  inbox:
    '{"status":200,"type":"application/json","answer":{"counts":{"waiting":0,"taken":0,"set-aside":1},"total":1,"page":1,"pageSize":50,"items":[{"id":"00000000-0000-4000-8000-000000000015","file":"IM0001","sentBy":"BIOMETER","receivedAt":"2025-11-25T07:11:00.000Z","state":"set-aside","why":null,"whyInWords":null,"identity":{"name":"BRANDL EDDA","born":"2016-05-20"},"day":"2025-11-20","holds":"axial length","child":null}]}}',
  inboxCounts:
    '{"status":200,"type":"application/json","answer":{"counts":{"waiting":0,"taken":0,"set-aside":1}}}',
  inboxFiles:
    '{"query":{"file":"notes.txt"},"status":201,"type":"application/json","answer":{"taken":[{"file":"notes.txt","outcome":"skipped","why":"Which column says whose row it is: a number or a name? Say it with a mapping, which the page for imports writes."}]}}',
  inboxItem:
    '{"params":{"itemId":"00000000-0000-4000-8000-000000000015"},"status":200,"type":"application/json","answer":{"id":"00000000-0000-4000-8000-000000000015","file":"IM0001","sentBy":"BIOMETER","receivedAt":"2025-11-25T07:11:00.000Z","state":"waiting","why":"no-child","whyInWords":"no child of this practice is named so","identity":{"name":"BRANDL EDDA","born":"2016-05-20"},"day":"2025-11-20","holds":"axial length","child":null,"reason":null,"alike":0,"notes":[],"device":"A","childToo":{},"visits":[{"date":"2025-11-20","right":{"axialLength":{"mm":23.41,"device":"A"}}}],"documents":[],"others":[],"candidates":[],"compared":null,"undo":[],"events":[{"state":"waiting","at":"2025-11-25T07:11:00.000Z","by":null,"why":"no-child","reason":null}]}}',
  inboxItemFile:
    '{"params":{"itemId":"00000000-0000-4000-8000-000000000015"},"status":200,"type":"application/octet-stream"}',
  instruments:
    '{"status":200,"type":"application/json","answer":{"listener":{"state":"stopped","host":"","port":null,"title":"LENGTHWISE","isTls":false,"isPortFromStart":false,"isSet":false,"isOpenToThisMachine":false,"isForThisMachineOnly":false,"problem":null,"since":null},"heard":[],"counts":{"received":0,"refused":0},"total":0,"page":1,"pageSize":25,"events":[]}}',
  logIn:
    '{"body":{"name":"ada","password":"(password)"},"status":201,"type":"application/json","answer":{"person":{"id":"00000000-0000-4000-8000-000000000001","name":"Ada Lindqvist","role":"clinician"}}}',
  logOut: '{"status":204}',
  lookForMessages:
    '{"status":201,"type":"application/json","answer":{"added":0,"cancelled":0,"sent":0,"putOff":0,"refused":0,"unknown":0,"held":"off"}}',
  lookForNews: '{"status":201,"type":"application/json","answer":{"planned":0,"delivered":0,"failed":0}}',
  lot: '{"params":{"lot":"LT-07"},"status":200,"type":"application/json","answer":{"lot":"LT-07","children":[{"id":"00000000-0000-4000-8000-000000000003","name":"Mira Solberg","number":"18","bottles":[{"dispensed":"2025-11-04","opened":"2025-11-04","beyondUse":"2025-12-04","concentrationPercent":0.05,"pharmacy":null}]}]}}',
  makeArchive: '{"body":{"withPapers":false,"password":"(password)"},"status":201,"type":"application/json"}',
  message:
    '{"params":{"messageId":"00000000-0000-4000-8000-000000000019"},"status":200,"type":"application/json","answer":{"id":"00000000-0000-4000-8000-000000000019","child":{"id":"00000000-0000-4000-8000-000000000003","name":"Mira Solberg","number":"18"},"kind":"visit-ahead","channel":"email","to":"ines@family.example","name":"Ines Solberg","language":"en","due":"2025-12-10","state":"waiting","problem":null,"reply":null,"attempts":0,"nextAttemptAt":null,"changedAt":"2025-11-25T08:10:00.000Z","changedBy":null,"list":null,"subject":"Time to book a visit","text":"Please call us.","messageId":"<00000000-0000-4000-8000-000000000020@harbour.example>","createdAt":"2025-11-25T08:10:00.000Z","events":[{"state":"waiting","at":"2025-11-25T08:10:00.000Z","by":null,"problem":null,"reply":null}]}}',
  messageList:
    '{"params":{"list":"00000000-0000-4000-8000-000000000024"},"status":200,"type":"text/csv","answer":"\\"Name\\",\\"Telephone, digits only\\",\\"Language\\",\\"Text\\"\\r\\n\\"Ines Solberg\\",\\"\\",\\"en\\",\\"Please call us.\\"\\r\\n"}',
  messagePlan:
    '{"status":200,"type":"application/json","answer":{"today":"2025-11-25","until":"2025-12-09","total":0,"messages":[]}}',
  messages:
    '{"status":200,"type":"application/json","answer":{"total":5,"page":1,"pageSize":50,"counts":{"waiting":3,"sending":0,"sent":1,"failed":0,"unknown":0,"cancelled":1},"toHandOver":{"sms":1,"post":0},"messages":[{"id":"00000000-0000-4000-8000-000000000025","child":{"id":"00000000-0000-4000-8000-000000000003","name":"Mira Solberg","number":"18"},"kind":"visit-ahead","channel":"sms","to":"ines@family.example","name":"Ines Solberg","language":"en","due":"2025-12-10","state":"waiting","problem":"taken-back","reply":null,"attempts":0,"nextAttemptAt":null,"changedAt":"2025-11-25T09:00:00.000Z","changedBy":"Ada Lindqvist","list":null}],"health":{"lastLookAt":"2025-11-25T09:00:00.000Z","lastAcceptedAt":null,"failure":null,"server":null,"nextAttemptAt":null,"isOn":false,"isQuiet":false,"quietTo":null}}}',
  newImport:
    '{"query":{"name":"lengths.csv"},"status":201,"type":"application/json","answer":{"id":"00000000-0000-4000-8000-000000000013","file":"lengths.csv","bytes":98,"by":"Ada Lindqvist","state":"chosen","progress":null,"table":{"headings":["name"],"hasHeadings":true,"firstRows":[["Mira Solberg"]],"dateOrders":[{"heading":"born","orders":["year-month-day"],"example":null}],"notes":[],"fault":null},"fields":[{"id":"number","title":"Number of the child","group":"child","perEye":false,"forBoth":false,"unit":null,"alternatives":[]}],"mapping":{"id":"guess","title":"lengths.csv","rowIs":"visit","dateOrder":"year-month-day","decimalSign":".","columns":[{"heading":"name","field":"name"}]},"savedMapping":null,"questions":[],"check":null,"recorded":null,"counts":null,"undone":null,"failure":null}}',
  openShared:
    '{"params":{"token":"example-11xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx"},"body":{"born":"2017-03-14"},"status":201,"type":"application/json","answer":{"document":{"kind":"family","title":"How Mira Solberg\'s eyes are doing","language":"en","date":"2025-11-25","blocks":[{"kind":"lead","text":"We have measured Mira Solberg\'s eyes once, so we cannot say yet how fast they grow."}],"foot":"This page helps you to talk with your eye doctor. It does not replace an examination, and it is not a medical device.","signatureHead":["Name"],"letterhead":{"practice":"Quiet Harbour","lines":[]}},"language":"en"}}',
  practice:
    '{"status":200,"type":"application/json","answer":{"name":"Quiet Harbour","latitude":51.5,"today":"2025-11-25","settings":{"alpha":0.1,"beta":0.1,"certainty":0.8,"cuts":{"nearNormal":0.25,"slowed":0.75,"asUntreated":1.5},"settingFactor":1},"rules":{"protocols":[],"feeSchedules":[],"consentWordings":[],"pharmacies":[],"examinationSwitches":{},"contacts":{"poisonCentre":"+353 1 555 0199"},"templates":[],"mappings":[]}}}',
  recordFamilyContact:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"contact":{"name":"Ines Solberg","relation":"mother","language":"en","email":"ines@family.example","reachedBy":"email","agreed":{"on":"2025-11-03","to":["visits","bottles"]}}},"status":201,"type":"application/json"}',
  recordPaper:
    '{"params":{"kind":"contacts"},"body":{"body":{"practice":"+353 1 555 0100","emergency":"112","poisonCentre":"+353 1 555 0199"}},"status":201,"type":"application/json","answer":{"rules":{"protocols":[],"feeSchedules":[],"consentWordings":[],"pharmacies":[],"examinationSwitches":{},"contacts":{"poisonCentre":"+353 1 555 0199"},"templates":[],"mappings":[]},"papers":[{"id":"00000000-0000-4000-8000-000000000002","kind":"contacts","body":{"poisonCentre":"+353 1 555 0199"},"author":"Ada Lindqvist","recordedAt":"2025-11-25T09:00:00.000Z","supersedes":null,"supersededBy":null,"reason":null}]}}',
  refused:
    '{"status":422,"answer":{"title":"Something needs to be put right","problems":[{"path":"born","value":"2017-02-30","allowed":"a day of the calendar written YYYY-MM-DD","message":"born must be a day of the calendar written YYYY-MM-DD, not \\"2017-02-30\\"."},{"path":"name","value":"","allowed":"the child\'s name","message":"name must be the child\'s name, not \\"\\"."}]}}',
  removeArchive: '{"params":{"archiveId":"00000000-0000-4000-8000-000000000014"},"status":0}',
  removeWebhook:
    '{"params":{"webhookId":"00000000-0000-4000-8000-000000000017"},"status":200,"type":"application/json"}',
  research:
    '{"status":200,"type":"application/json","answer":{"children":1,"rows":6,"smallestCell":5,"smallCells":[{"sex":"female","ancestry":"unstated","ageAtFirstVisit":6,"children":1}],"dictionary":[{"column":"study_id","title":"Child","description":"Stands for the child; the same in every table of this practice, and nowhere else.","unit":"","allowed":"","field":""}]}}',
  researchTable: '{"status":200,"type":"application/zip"}',
  resolveMessage:
    '{"params":{"messageId":"00000000-0000-4000-8000-000000000023"},"body":{"was":"sent"},"status":201,"type":"application/json"}',
  retryMessage:
    '{"params":{"messageId":"00000000-0000-4000-8000-000000000022"},"status":201,"type":"application/json"}',
  revokeFamilyLink:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003","linkId":"example-10xxxxxxxxxxxx"},"status":200,"type":"application/json"}',
  revokeToken:
    '{"params":{"tokenId":"00000000-0000-4000-8000-000000000016"},"status":200,"type":"application/json","answer":{"tokens":[{"id":"00000000-0000-4000-8000-000000000016","name":"scheduling","ending":"7Qx2","scopes":["read"],"createdAt":"2025-11-25T09:00:00.000Z","createdBy":"Ada Lindqvist","expiresAt":"2026-11-25T09:00:00.000Z","lastUsedAt":null,"revokedAt":"2025-11-25T09:00:00.000Z","revokedBy":"Ada Lindqvist","state":"revoked"}]}}',
  rules: '{"status":200,"type":"application/json"}',
  runImport: '{"params":{"id":"00000000-0000-4000-8000-000000000013"},"status":0}',
  session: '{"status":200,"type":"application/json"}',
  setAsideInboxItem:
    '{"params":{"itemId":"00000000-0000-4000-8000-000000000015"},"body":{"reason":"a test of the instrument"},"status":201,"type":"application/json"}',
  setWebhook:
    '{"params":{"webhookId":"00000000-0000-4000-8000-000000000017"},"body":{"state":"off"},"status":201,"type":"application/json","answer":{"webhooks":[{"id":"00000000-0000-4000-8000-000000000017","url":"http://localhost:9/news","events":["finding-new"],"state":"off","failures":0,"pausedUntil":null,"createdAt":"2025-11-25T09:00:00.000Z","createdBy":"Ada Lindqvist","changedAt":"2025-11-25T09:00:00.000Z","changedBy":"Ada Lindqvist","waiting":0,"delivered":0,"failed":0}]}}',
  settleImport:
    '{"params":{"id":"00000000-0000-4000-8000-000000000013"},"body":{"decisions":[{"group":1,"as":"new"}]},"status":0}',
  sharedCalendar:
    '{"params":{"token":"example-11xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx"},"body":{"born":"2017-03-14"},"status":200,"type":"text/calendar","answer":"BEGIN:VCALENDAR\\r\\nVERSION:2.0\\r\\nPRODID:-//Lengthwise//Calendar//EN\\r\\nMETHOD:PUBLISH\\r\\nNAME:Reminders\\r\\nX-WR-CALNAME:Reminders\\r\\nBEGIN:VEVENT\\r\\nUID:00000000-0000-4000-8000-000000000009\\r\\nSEQUENCE:20417\\r\\nDTSTAMP:20251125T000000Z\\r\\nDTSTART;VALUE=DATE:20260524\\r\\nX-MICROSOFT-CDO-ALLDAYEVENT:TRUE\\r\\nX-MICROSOFT-MSNCA …"}',
  sharedPdf:
    '{"params":{"token":"example-11xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx"},"body":{"born":"2017-03-14"},"status":200,"type":"application/pdf"}',
  startTreatment:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003"},"body":{"from":"2025-11-03","kind":"atropine","concentrationPercent":0.05},"status":201,"type":"application/json"}',
  takeInboxItem:
    '{"params":{"itemId":"00000000-0000-4000-8000-000000000015"},"body":{"newChild":{"name":"Edda Brandl","born":"2016-05-20","sex":"female"}},"status":201,"type":"application/json"}',
  takeListBack:
    '{"params":{"list":"00000000-0000-4000-8000-000000000024"},"status":201,"type":"application/json","answer":{"count":1}}',
  templateNames:
    '{"status":200,"type":"application/json","answer":{"documents":[{"document":"family","parts":["lead"],"required":["lead"],"values":["child"]}]}}',
  testMail: '{"body":{"to":"ada@harbour.example"},"status":0}',
  today:
    '{"status":200,"type":"application/json","answer":{"today":"2025-11-25","read":1,"total":1,"things":1,"children":1,"groups":[{"group":"concern","count":1,"rows":[{"child":{"id":"00000000-0000-4000-8000-000000000003","name":"Mira Solberg","number":"18","born":"2017-03-14"},"group":"concern","what":"bright light outdoors","why":"nobody looks after it yet","since":"2025-11-20","due":null,"closes":null,"state":"open","role":"clinician","action":"safety"}]}]}}',
  tokens: '{"status":200,"type":"application/json"}',
  tryTemplate:
    '{"body":{"document":"family","language":"en","text":"# {practice}\\n","child":"00000000-0000-4000-8000-000000000003"},"status":201,"type":"application/json","answer":{"problems":[{"line":2,"message":"[lead] must stand somewhere: it keeps the child safe, or says who answers for this"}],"document":null,"refused":null}}',
  undoImport: '{"params":{"id":"00000000-0000-4000-8000-000000000013"},"status":0}',
  undoInboxItem:
    '{"params":{"itemId":"00000000-0000-4000-8000-000000000015"},"body":{"reason":"another child"},"status":201,"type":"application/json"}',
  webhooks: '{"status":200,"type":"application/json"}',
  withdrawEntry:
    '{"params":{"id":"00000000-0000-4000-8000-000000000003","entryId":"00000000-0000-4000-8000-000000000008"},"body":{"reason":"recorded for another child"},"status":201,"type":"application/json"}',
}
