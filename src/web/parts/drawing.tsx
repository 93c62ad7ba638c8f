import { useMemo } from "react"

/** A finished figure of src/chart. Injected as text: src/chart escapes every name and note it draws. */
export function Drawing({ svg, className }: { readonly svg: string; readonly className?: string }) {
  const html = useMemo(() => ({ __html: svg }), [svg])
  // biome-ignore lint/security/noDangerouslySetInnerHtml: see above
  return <div className={className} dangerouslySetInnerHTML={html} />
}
