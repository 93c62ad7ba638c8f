import type { Catalogue } from "../../engine/say.js"

// Machine-made; not yet reviewed by a clinician whose own language this is.
export const tokens: Catalogue = {
  "too many wrong tokens from this address": "demasiadas claves incorrectas desde esta dirección",
  "too many requests with this token": "demasiadas solicitudes con esta clave",
  "another attempt in {seconds, plural, one {# second} other {# seconds}}":
    "otro intento dentro de {seconds, plural, one {# segundo} other {# segundos}}",
  "a token that is neither revoked nor expired": "una clave que no esté revocada ni caducada",
  "this token opens nothing: it is unknown, revoked or expired":
    "esta clave no abre nada: es desconocida, está revocada o ha caducado",
  "a person who is logged in": "una persona que haya iniciado sesión",
  "this can be asked for by a person who is logged in only, with no token":
    "esto solo puede pedirlo una persona que haya iniciado sesión, no una clave",
  "this token was made without the scope {scope}": "esta clave se creó sin el permiso {scope}",
}
